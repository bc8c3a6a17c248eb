namespace Proveout.Engine.Electrical;

/// <summary>What a metal net carries when the machine is on.</summary>
public enum NetClass
{
    /// <summary>Nothing: no conductor lands on it.</summary>
    Spare,

    /// <summary>Signals, sensors, data, windings, outputs: extra-low voltage that is no supply.</summary>
    Signal,

    /// <summary>Zero volt of an extra-low-voltage supply.</summary>
    ZeroVolt,

    /// <summary>Positive pole of an extra-low-voltage supply.</summary>
    Positive,

    /// <summary>Mains neutral.</summary>
    Neutral,

    /// <summary>Mains line.</summary>
    Line,

    /// <summary>Protective conductors and bonding.</summary>
    ProtectiveEarth,
}
