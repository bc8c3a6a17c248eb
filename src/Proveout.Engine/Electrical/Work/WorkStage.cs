namespace Proveout.Engine.Electrical;

/// <summary>What a conductor belongs to in the order of work: what protects first, what hurts most before what hurts least.</summary>
public enum WorkStage
{
    /// <summary>Protective conductors and bonding.</summary>
    ProtectiveBonding,

    /// <summary>Line and neutral.</summary>
    Mains,

    /// <summary>Positive and 0 V of extra-low-voltage supplies.</summary>
    Supplies,

    /// <summary>Heaters, fans, lamps and other loads.</summary>
    Loads,

    /// <summary>Motor windings.</summary>
    Motors,

    /// <summary>Sensors, switches and other signals.</summary>
    Signals,

    /// <summary>Data.</summary>
    Data,
}
