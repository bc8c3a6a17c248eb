namespace Proveout.Engine.Machine;

/// <summary>An upright rectangle on a surface, in millimetres from its lower left corner.</summary>
/// <param name="LeftMm">Its left edge.</param>
/// <param name="BottomMm">Its lower edge.</param>
/// <param name="RightMm">Its right edge; not less than the left one.</param>
/// <param name="TopMm">Its upper edge; not less than the lower one.</param>
public readonly record struct Rectangle(double LeftMm, double BottomMm, double RightMm, double TopMm)
{
    /// <summary>Its width.</summary>
    public double WidthMm => RightMm - LeftMm;

    /// <summary>Its height.</summary>
    public double HeightMm => TopMm - BottomMm;

    /// <summary>The point in its middle.</summary>
    public SpotMm Middle => new((LeftMm + RightMm) / 2, (BottomMm + TopMm) / 2);

    /// <summary>The rectangle grown by a distance on every side.</summary>
    public Rectangle Grown(double byMm) => new(LeftMm - byMm, BottomMm - byMm, RightMm + byMm, TopMm + byMm);

    /// <summary>True when another rectangle covers some of its area; touching edges do not count.</summary>
    public bool Overlaps(Rectangle other) =>
        LeftMm < other.RightMm && other.LeftMm < RightMm && BottomMm < other.TopMm && other.BottomMm < TopMm;

    /// <summary>True when another rectangle lies wholly in it.</summary>
    public bool Holds(Rectangle other) =>
        LeftMm <= other.LeftMm && BottomMm <= other.BottomMm && other.RightMm <= RightMm && other.TopMm <= TopMm;
}
