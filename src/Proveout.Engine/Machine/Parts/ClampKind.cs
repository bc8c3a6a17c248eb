namespace Proveout.Engine.Machine;

/// <summary>How a terminal holds a conductor.</summary>
public enum ClampKind
{
    /// <summary>Screw that presses on the conductor.</summary>
    Screw,

    /// <summary>Spring or lever.</summary>
    Spring,

    /// <summary>Crimped contact in a housing.</summary>
    Crimp,

    /// <summary>Push-on tab.</summary>
    Tab,

    /// <summary>Stud or screw for a lug.</summary>
    Stud,

    /// <summary>Soldered.</summary>
    Solder,
}
