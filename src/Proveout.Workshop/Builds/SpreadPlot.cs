using System.Globalization;
using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>Draws how many builds read what at one check.</summary>
internal static class SpreadPlot
{
    private const int MostBins = 40;
    private const double ShownDeviations = 8;
    private const double Margin = 0.05;

    /// <summary>The plot; null when no reading has a value.</summary>
    public static PlotView? Of(CheckSpread spread, IEnumerable<double> readings)
    {
        if (spread.Spread is not { } known)
            return null;
        double[] values = [.. readings.Where(double.IsFinite)];
        // One reading a thousand times the others would press all others into one bar.
        var reach = ShownDeviations * Math.Max(known.Deviation, CheckSpreads.UncertaintyOf(spread.Check, known.Median));
        var (from, to) = (Math.Max(known.Lowest, known.Median - reach), Math.Min(known.Highest, known.Median + reach));
        if (!(to > from))
            (from, to) = (known.Median - HalfOf(known.Median), known.Median + HalfOf(known.Median));
        var bins = Bins(values, from, to);
        return new PlotView(
            spread.Check.Title,
            Description(spread, values.Count(value => value < from || value > to)),
            new PlotAxis($"Reading, {spread.Check.Unit}", from, to),
            new PlotAxis("Builds", 0, bins.Max() * (1 + Margin)),
            [new PlotLine([.. Outline(bins, from, to)], IsFilled: true)],
            [.. Marks(spread, known.Median, from, to)]);
    }

    // All readings are the same: something round it is shown.
    private static double HalfOf(double value) => value == 0 ? 1 : Math.Abs(value) * Margin;

    private static int[] Bins(double[] values, double from, double to)
    {
        // As many bars as the root of the number of readings (common practice).
        var bins = new int[Math.Clamp((int)Math.Ceiling(Math.Sqrt(values.Length)), 1, MostBins)];
        foreach (var value in values)
            bins[Math.Clamp((int)((value - from) / (to - from) * bins.Length), 0, bins.Length - 1)]++;
        return bins;
    }

    private static IEnumerable<(double Across, double Up)> Outline(int[] bins, double from, double to)
    {
        var width = (to - from) / bins.Length;
        yield return (from, 0);
        foreach (var (index, count) in bins.Index())
        {
            yield return (from + (index * width), count);
            yield return (from + ((index + 1) * width), count);
        }

        yield return (to, 0);
    }

    private static IEnumerable<PlotMark> Marks(CheckSpread spread, double median, double from, double to)
    {
        yield return new(median, "median");
        var (low, high) = (spread.Check.Expectation.Low, spread.Check.Expectation.High);
        if (low > from && low < to)
            yield return new(low, "least");
        if (high > from && high < to)
            yield return new(high, "most");
    }

    private static string Description(CheckSpread spread, int outside) => string.Create(
        CultureInfo.InvariantCulture,
        $"{spread.Spread!.Value.Count} builds with a value: median {spread.SpreadWords}. It should read {CheckWords.Expected(spread.Check)}. {spread.Told}")
        + (outside > 0 ? string.Create(CultureInfo.InvariantCulture, $" {outside} beyond the plot {(outside == 1 ? "is" : "are")} counted in its outer bars.") : "")
        + (spread.OverRange > 0 ? string.Create(CultureInfo.InvariantCulture, $" {spread.OverRange} read over range and {(spread.OverRange == 1 ? "has" : "have")} no place on it.") : "");
}
