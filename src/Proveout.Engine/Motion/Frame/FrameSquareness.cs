namespace Proveout.Engine.Motion;

/// <summary>How square a frame of four corners is, and what to push.</summary>
/// <param name="Corners">Each corner's angle beyond a right one, in rad, in the order of the points.</param>
/// <param name="FirstDiagonal">Fitted diagonal between the first and the third point, in mm.</param>
/// <param name="SecondDiagonal">Fitted diagonal between the second and the fourth, in mm.</param>
/// <param name="PushMillimetres">By how much to move the third and fourth points along the side from the first to the second, that one held still; negative the other way.</param>
/// <param name="FirstDiagonalAfter">What the first diagonal should read after the push, in mm.</param>
/// <param name="SecondDiagonalAfter">What the second should read.</param>
/// <param name="LeftOver">Largest angle beyond a right one that no push removes, because opposite sides differ, in rad.</param>
public sealed record FrameSquareness(
    IReadOnlyList<FrameCorner> Corners,
    Uncertain FirstDiagonal,
    Uncertain SecondDiagonal,
    Uncertain PushMillimetres,
    Uncertain FirstDiagonalAfter,
    Uncertain SecondDiagonalAfter,
    Uncertain LeftOver)
{
    // A microradian is nothing at a frame: of corners that are alike the first is named.
    private const int AngleDigits = 6;

    /// <summary>The corner furthest from square.</summary>
    public FrameCorner Worst => Corners.MaxBy(corner => Math.Round(Math.Abs(corner.BeyondRight.Value), AngleDigits))!;

    /// <summary>Of a fitted frame of four points, named around it.</summary>
    public static FrameSquareness Of(FrameFit fit, IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentOutOfRangeException.ThrowIfNotEqual(names.Count, 4);
        return new(
            [.. Enumerable.Range(0, 4).Select(corner => new FrameCorner(names[corner], fit.Of(places => Angle(places, corner))))],
            fit.Of(places => PlaneAngles.Distance(places[0], places[2])),
            fit.Of(places => PlaneAngles.Distance(places[1], places[3])),
            fit.Of(places => FourBar.Of(places).Push),
            fit.Of(places => FourBar.Of(places).FirstDiagonal),
            fit.Of(places => FourBar.Of(places).SecondDiagonal),
            fit.Of(places => FourBar.Of(places).LeftOver));
    }

    private static double Angle(IReadOnlyList<(double X, double Y)> places, int corner) =>
        PlaneAngles.BeyondRight(places[corner], places[(corner + 3) % 4], places[(corner + 1) % 4]);
}
