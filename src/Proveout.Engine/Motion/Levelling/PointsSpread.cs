using System.Globalization;

namespace Proveout.Engine.Motion;

/// <summary>Whether points spread far enough over a plate to say how it lies.</summary>
internal static class PointsSpread
{
    // A strip narrower than this share of its length tilts by the probe's scatter.
    private const double LeastShare = 0.02;

    /// <summary>What is wrong with the points, with what to measure instead; null when nothing is.</summary>
    public static string? Of(IReadOnlyList<ProbePoint> points)
    {
        if (points.Count < 3)
            return $"{(points.Count == 0 ? "No point was" : points.Count == 1 ? "Only one point was" : "Only two points were")} measured. A plane needs three that do not lie on one line; probe near the corners and in the middle.";
        if (points.FirstOrDefault(point => !double.IsFinite(point.XMillimetres + point.YMillimetres + point.HeightMillimetres)) is var bad && !double.IsFinite(bad.XMillimetres + bad.YMillimetres + bad.HeightMillimetres))
            return "A point has no number for its place or height. Measure it again, or leave it out.";
        var (along, across) = Extent(points);
        return across < LeastShare * along || along == 0 ? OnOneLine(points) : null;
    }

    /// <summary>The sentence for points on one line.</summary>
    public static string OnOneLine(IReadOnlyList<ProbePoint> points)
    {
        var (along, across) = Extent(points);
        return along == 0
            ? "All points lie at the same place. Probe at least two more, far from it and from each other."
            : string.Create(CultureInfo.InvariantCulture, $"All points lie on one line, within {across:0.##} mm: how the plate tilts across it cannot be known. Probe at least one point {Math.Max(10, along / 2):0} mm beside the line.");
    }

    // Length and width of the strip that holds the points, along their principal direction.
    private static (double Along, double Across) Extent(IReadOnlyList<ProbePoint> points)
    {
        var (x, y) = (points.Average(point => point.XMillimetres), points.Average(point => point.YMillimetres));
        var (xx, xy, yy) = (0.0, 0.0, 0.0);
        foreach (var point in points)
        {
            xx += (point.XMillimetres - x) * (point.XMillimetres - x);
            xy += (point.XMillimetres - x) * (point.YMillimetres - y);
            yy += (point.YMillimetres - y) * (point.YMillimetres - y);
        }

        var angle = 0.5 * Math.Atan2(2 * xy, xx - yy);
        var (cosine, sine) = (Math.Cos(angle), Math.Sin(angle));
        double[] along = [.. points.Select(point => (cosine * (point.XMillimetres - x)) + (sine * (point.YMillimetres - y)))];
        double[] across = [.. points.Select(point => (cosine * (point.YMillimetres - y)) - (sine * (point.XMillimetres - x)))];
        return (along.Max() - along.Min(), across.Max() - across.Min());
    }
}
