namespace Proveout.Engine.Machine;

/// <summary>Colours of conductors; names and meanings as in IEC 60445 and IEC 60757.</summary>
public enum ConductorColour
{
    /// <summary>BK.</summary>
    Black,

    /// <summary>BN.</summary>
    Brown,

    /// <summary>RD.</summary>
    Red,

    /// <summary>OG.</summary>
    Orange,

    /// <summary>YE.</summary>
    Yellow,

    /// <summary>GN.</summary>
    Green,

    /// <summary>BU; neutral or mid-point conductor.</summary>
    Blue,

    /// <summary>VT.</summary>
    Violet,

    /// <summary>GY.</summary>
    Grey,

    /// <summary>WH.</summary>
    White,

    /// <summary>PK; functional earth.</summary>
    Pink,

    /// <summary>TQ.</summary>
    Turquoise,

    /// <summary>GNYE; protective conductor only.</summary>
    GreenYellow,
}
