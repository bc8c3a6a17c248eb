using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>Moves of screws or lift motors that level a plate, from probed points.</summary>
/// <remarks>
/// A rigid plate follows its supports as a plane. With four supports or more and enough points the twist is taken out too,
/// which bends the plate; leave that out where a plate must not be bent. All supports raised alike change nothing, so one is left as it is.
/// Two supports take away the tilt along the line that joins them; the tilt across it stays.
/// </remarks>
public static class Levelling
{
    /// <summary>The advice.</summary>
    /// <param name="map">What was probed.</param>
    /// <param name="supports">Where the plate can be set: three or more that do not lie on one line; or two lifts, which only roll it.</param>
    /// <param name="probeStandardMillimetres">Standard uncertainty of one probed height.</param>
    /// <param name="leave">Name of the support to leave; null to leave the one that keeps the others' turns few.</param>
    /// <param name="mayBend">True when a twist may be taken out by bending the plate.</param>
    public static LevellingResult Of(PlateMap map, IReadOnlyList<Support> supports, double probeStandardMillimetres, string? leave = null, bool mayBend = false)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(supports);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(probeStandardMillimetres);
        if (ProblemWith(supports, leave) is { } problem)
            return new(null, problem);
        var frame = MapFrame.Of(map.Points);
        double[] heights = [.. map.Points.Select(point => point.HeightMillimetres)];
        double[] standards = [.. map.Points.Select(_ => probeStandardMillimetres)];
        var bends = mayBend && supports.Count > 3 && LeastSquares.Fit(Rows(map, frame.TwistRow), heights) is not null;
        Func<double, double, double[]> row = bends ? frame.TwistRow : frame.PlaneRow;
        var design = Rows(map, row);
        var fit = LeastSquares.Fit(design, heights, standards)!;
        // What is not plane is not scatter of the probe, yet moves the plane like it.
        var scale = fit.Degrees > 0 ? Math.Max(1, fit.Scatter * StudentT.Factor(0.95, fit.Degrees) / Uncertain.CoverageFactor) : 1;
        var zone = Minimax.Fit(design, heights) ?? (fit.Values, fit.Residuals.Max(Math.Abs));
        var left = supports.ToList().FindIndex(support => support.Name == leave) is >= 0 and var named ? named : Quietest(supports, row, fit.Values);
        return new(
            new LevellingAdvice(
                Moves(supports, row, fit, fit.Values, scale, left),
                Moves(supports, row, fit, zone.Values, scale, left),
                supports.Count == 2 ? Roll.RangeAfter(map, frame, supports, fit.Values) : fit.Residuals.Max() - fit.Residuals.Min(),
                supports.Count == 2 ? Roll.RangeAfter(map, frame, supports, zone.Values) : 2 * zone.Largest,
                bends)
            {
                TiltAcross = supports.Count == 2 ? Roll.TiltAcross(map, frame, supports, fit, scale) : null,
            },
            null);
    }

    private static string? ProblemWith(IReadOnlyList<Support> supports, string? leave)
    {
        if (supports.Count < 2)
            return "One support cannot level anything. Give the place of each screw or lift: three or more to level both ways, or two lifts to level along the line between them.";
        if (supports.GroupBy(support => support.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            return $"Two supports are called {Quote.Of(twice.Key)}. Give each its own name.";
        if (leave is not null && supports.All(support => support.Name != leave))
            return $"There is no support {Quote.Of(leave)} to leave. The supports are {string.Join(", ", supports.Select(support => Quote.Of(support.Name)))}.";
        if (supports.Count == 2)
            return Roll.Length(supports) > 0 ? null : "Both supports are at the same place. See that their places are right.";
        return PointsSpread.Of([.. supports.Select(support => new ProbePoint(support.XMillimetres, support.YMillimetres, 0))]) is null
            ? null
            : "The supports lie on one line: across it they cannot level the plate. See that their places are right.";
    }

    private static double[][] Rows(PlateMap map, Func<double, double, double[]> row) =>
        [.. map.Points.Select(point => row(point.XMillimetres, point.YMillimetres))];

    // The support whose correction is the median: the sum of all others' moves is then least.
    private static int Quietest(IReadOnlyList<Support> supports, Func<double, double, double[]> row, double[] values) =>
        Enumerable.Range(0, supports.Count).OrderBy(index => Height(row, supports[index], values)).ElementAt((supports.Count - 1) / 2);

    private static double Height(Func<double, double, double[]> row, Support support, double[] values) =>
        row(support.XMillimetres, support.YMillimetres).Zip(values, (coefficient, value) => coefficient * value).Sum();

    private static SupportMove[] Moves(
        IReadOnlyList<Support> supports, Func<double, double, double[]> row, LinearFit fit, double[] values, double scale, int left)
    {
        var kept = row(supports[left].XMillimetres, supports[left].YMillimetres);
        return [.. supports.Select((support, index) => index == left ? new SupportMove(support, new(0, 0), IsLeft: true) : Move(support))];

        SupportMove Move(Support support)
        {
            double[] difference = [.. row(support.XMillimetres, support.YMillimetres).Zip(kept, (one, other) => other - one)];
            return new(support, new(difference.Zip(values, (coefficient, value) => coefficient * value).Sum(), scale * fit.StandardOf(difference)), IsLeft: false);
        }
    }
}
