namespace Proveout.Engine.Motion;

/// <summary>How a test piece is made.</summary>
public enum PieceMaking
{
    /// <summary>Laid down in layers: every part.</summary>
    Printed,

    /// <summary>Cut from stock from above: the double ring and the stair.</summary>
    Milled,

    /// <summary>Laid as a bead of paste: the double ring and the single wall.</summary>
    Dispensed,
}
