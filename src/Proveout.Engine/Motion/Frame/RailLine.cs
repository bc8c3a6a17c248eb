using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>A rail measured with a dial along its length: how straight it is, and how it runs against what the dial was guided by.</summary>
/// <remarks>Straightness is the width of the zone about a reference line: through the ends, of least squares, or least of all (ISO 230-1, ISO 12780-1).</remarks>
/// <param name="Slope">Rise of the least-squares line for each mm; the parallelism when the dial rode on the other rail.</param>
/// <param name="RiseMillimetres">Rise of that line over the measured length, in mm.</param>
/// <param name="AboutEnds">Straightness about the line through the ends, in mm.</param>
/// <param name="AboutLeastSquares">Straightness about the least-squares line, in mm.</param>
/// <param name="LeastZone">Straightness by the minimum zone, in mm.</param>
/// <param name="MiddleMillimetres">Largest distance from the line through the ends, with its sign: positive for a crown.</param>
public sealed record RailLine(Uncertain Slope, Uncertain RiseMillimetres, double AboutEnds, double AboutLeastSquares, double LeastZone, double MiddleMillimetres)
{
    /// <summary>Of readings along a rail; null below three different places.</summary>
    /// <param name="positions">Places along the rail, in mm.</param>
    /// <param name="readings">Dial readings there, in mm.</param>
    /// <param name="standard">Standard uncertainty of a reading, in mm.</param>
    public static RailLine? Of(IReadOnlyList<double> positions, IReadOnlyList<double> readings, double standard)
    {
        ArgumentNullException.ThrowIfNull(positions);
        ArgumentNullException.ThrowIfNull(readings);
        if (positions.Count != readings.Count || positions.Distinct().Count() < 3)
            return null;
        var (from, to) = (positions.Min(), positions.Max());
        double[][] design = [.. positions.Select(position => new[] { 1, (position - from) / (to - from) })];
        double[] heights = [.. readings];
        var fit = LeastSquares.Fit(design, heights, [.. readings.Select(_ => standard)])!;
        var widening = Math.Max(1, fit.Scatter * StudentT.Factor(0.95, fit.Degrees) / Uncertain.CoverageFactor);
        var rise = new Uncertain(fit.Values[1], widening * Math.Sqrt(fit.Cofactors[1, 1]));
        double[] ends = [.. FromEnds(design, heights)];
        var width = fit.Residuals.Max() - fit.Residuals.Min();
        return new(
            new(rise.Value / (to - from), rise.Standard / (to - from)),
            rise,
            ends.Max() - ends.Min(),
            width,
            Minimax.Fit(design, heights) is { } zone ? Math.Min(2 * zone.Largest, width) : width,
            ends.MaxBy(Math.Abs));
    }

    private static IEnumerable<double> FromEnds(double[][] design, double[] heights)
    {
        var first = heights[Array.FindIndex(design, row => row[1] == 0)];
        var last = heights[Array.FindIndex(design, row => row[1] == 1)];
        return heights.Select((height, index) => height - first - ((last - first) * design[index][1]));
    }
}
