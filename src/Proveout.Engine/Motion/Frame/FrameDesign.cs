namespace Proveout.Engine.Motion;

/// <summary>A frame and gantry as drawn, with what counts as sound and what the instruments may be off by.</summary>
/// <param name="WidthMillimetres">Side A-B.</param>
/// <param name="DepthMillimetres">Side D-A, along which the rails run.</param>
/// <param name="SpanMillimetres">Distance of the two stops.</param>
public sealed record FrameDesign(double WidthMillimetres, double DepthMillimetres, double SpanMillimetres)
{
    /// <summary>Angle beyond a right one that a sound corner or beam may have, in rad: 0.1 mm in 200 mm (common practice).</summary>
    public double SquareLimit { get; init; } = GantryRacking.LargestShare;

    /// <summary>What a foot of a sound frame may stand off, in mm (common practice).</summary>
    public double TwistLimitMillimetres { get; init; } = 0.2;

    /// <summary>Bow and rise of a sound rail over its length, in mm (common practice).</summary>
    public double RailLimitMillimetres { get; init; } = 0.05;

    /// <summary>Most that one tape reading is off, in mm.</summary>
    public double TapeErrorMillimetres { get; init; } = 0.5;

    /// <summary>Most that one feeler reading is off, in mm.</summary>
    public double FeelerErrorMillimetres { get; init; } = 0.05;

    /// <summary>Most that one dial reading is off, in mm.</summary>
    public double DialErrorMillimetres { get; init; } = 0.01;

    /// <summary>Diagonal A-C less B-D, in mm, when corner A is open by an angle: law of cosines, opposite sides equal.</summary>
    public double DiagonalDifference(double beyondRight)
    {
        var squares = (WidthMillimetres * WidthMillimetres) + (DepthMillimetres * DepthMillimetres);
        var skew = 2 * WidthMillimetres * DepthMillimetres * Math.Sin(beyondRight);
        return Math.Sqrt(squares - skew) - Math.Sqrt(squares + skew);
    }
}
