using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>A belt's length over the travel of the axes that it rides on.</summary>
/// <param name="Belt">The belt.</param>
/// <param name="ShortestMm">Its shortest length at the places looked at.</param>
/// <param name="LongestMm">Its longest.</param>
/// <param name="Blocked">True when at some place the path has no room.</param>
public sealed record BeltLength(Belt Belt, double ShortestMm, double LongestMm, bool Blocked)
{
    /// <summary>Places looked at on each axis, ends included.</summary>
    public const int PlacesAnAxis = 7;

    // Places in files have a few decimals; a change below this stretches a belt less than any hand or tape can tell. A belt of
    // 9 mm width and some 10 kN per unit strain gains 1 N by it on 100 mm (common practice, from memory).
    private const double SameMm = 0.01;

    /// <summary>True when it stays the same at every place looked at, as it must.</summary>
    public bool IsConstant => !Blocked && LongestMm - ShortestMm <= SameMm;

    /// <summary>A loop's length in teeth.</summary>
    public double Teeth => LongestMm / Belt.Pitch.Millimeters;

    /// <summary>Looks at a belt over the travel.</summary>
    public static BeltLength Of(MotionDesign motion, Belt belt)
    {
        var ridden = AxisPlaces.RiddenBy(motion, belt);
        BeltPath?[] paths = [.. AxisPlaces.Over(motion, ridden.Contains, PlacesAnAxis).Select(places => BeltPath.At(motion, belt, places))];
        double[] lengths = [.. paths.OfType<BeltPath>().Select(path => path.LengthMm)];
        return new(belt, lengths.DefaultIfEmpty(double.NaN).Min(), lengths.DefaultIfEmpty(double.NaN).Max(), paths.Contains(null));
    }

    /// <summary>How much longer the path becomes for a millimetre of an axis; from the directions of its spans.</summary>
    /// <remarks>A taut path has least length, so its tangent points may be held while its circles move: each span adds u · (movement of its end - of its start).</remarks>
    public static double Gradient(MotionDesign motion, BeltPath path, string axis)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.Spans.Sum(span => GradientOf(motion, path.Belt, span, axis));
    }

    internal static double GradientOf(MotionDesign motion, Belt belt, PathSpan span, string axis) =>
        span.Direction.Dot(BeltPlaces.MoveOf(motion, belt.Path[span.To].At, axis) - BeltPlaces.MoveOf(motion, belt.Path[span.From].At, axis));
}
