namespace Proveout.Engine.Electrical;

/// <summary>What a branch of the live circuit is.</summary>
internal enum LiveBranchKind
{
    /// <summary>A resistance that is always there: copper, joint, heater, consumer, insulation, fuse.</summary>
    Path,

    /// <summary>A contact that a control moves.</summary>
    Contact,

    /// <summary>A path that a command or a port closes.</summary>
    Switch,

    /// <summary>A junction: a forward voltage and a small resistance, or open.</summary>
    Junction,

    /// <summary>A direct-voltage source with a limit.</summary>
    Supply,

    /// <summary>An output that holds a current.</summary>
    Held,

    /// <summary>A capacitor: open for direct current.</summary>
    Capacitor,

    /// <summary>What a supply takes at its input for what it gives.</summary>
    Input,

    /// <summary>The voltage of the mains behind its impedance.</summary>
    Mains,
}
