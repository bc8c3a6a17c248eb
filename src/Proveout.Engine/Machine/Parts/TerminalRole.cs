namespace Proveout.Engine.Machine;

/// <summary>What a terminal carries.</summary>
public enum TerminalRole
{
    /// <summary>Mains line conductor.</summary>
    Line,

    /// <summary>Mains neutral conductor.</summary>
    Neutral,

    /// <summary>Protective conductor or protective bonding.</summary>
    ProtectiveEarth,

    /// <summary>Positive pole of an extra-low-voltage supply.</summary>
    Positive,

    /// <summary>Zero-volt pole of an extra-low-voltage supply.</summary>
    ZeroVolt,

    /// <summary>An output that switches a load.</summary>
    Output,

    /// <summary>A signal, sensor or control conductor.</summary>
    Signal,

    /// <summary>A data conductor.</summary>
    Data,

    /// <summary>A winding of a motor or coil.</summary>
    Winding,

    /// <summary>A contact of a switch, or a through terminal: carries what it is wired to.</summary>
    Passive,
}
