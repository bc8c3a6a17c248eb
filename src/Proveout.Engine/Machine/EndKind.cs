namespace Proveout.Engine.Machine;

/// <summary>How the end of a conductor is dressed.</summary>
public enum EndKind
{
    /// <summary>Stripped, nothing on it.</summary>
    Bare,

    /// <summary>Ferrule (DIN 46228).</summary>
    Ferrule,

    /// <summary>Two conductors in one ferrule made for it.</summary>
    TwinFerrule,

    /// <summary>Crimped contact.</summary>
    Crimp,

    /// <summary>Ring or fork lug on bared metal.</summary>
    Lug,

    /// <summary>Ring or fork lug on paint or an anodic layer: held, and not connected.</summary>
    LugOnPaint,

    /// <summary>Push-on receptacle.</summary>
    Receptacle,

    /// <summary>Strands stiffened with solder.</summary>
    Tinned,

    /// <summary>Soldered in place.</summary>
    Solder,
}
