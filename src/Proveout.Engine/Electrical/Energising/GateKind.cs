namespace Proveout.Engine.Electrical;

/// <summary>What a gate lets power into, in the order in which a machine is usually energised; the order of the loads is computed.</summary>
public enum GateKind
{
    /// <summary>A branch, board or converter that others hang on.</summary>
    Board,

    /// <summary>Sensors, switches and other signals.</summary>
    Signal,

    /// <summary>Fans, lamps and other small loads.</summary>
    SmallLoad,

    /// <summary>Motors and magnets: what moves.</summary>
    Motion,

    /// <summary>Heaters.</summary>
    Heater,
}
