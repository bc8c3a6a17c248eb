namespace Proveout.Engine.Motion;

/// <summary>Finds the tops of a power spectral density that stand out.</summary>
internal static class PeakSearch
{
    // Beyond what chance gives: an average of n segments scatters by 1 / sqrt(n), and the highest of some hundred values lies four of these above; a real peak is twice its surroundings at least.
    private const double LeastExcess = 2.5;
    private const double ChanceFactor = 5;

    // A hundredth of the power of the highest is a tenth of its amplitude.
    private const double LeastShare = 0.01;
    private const int Most = 6;
    private const int DipReach = 3;

    /// <summary>The peaks between two frequencies, highest first.</summary>
    public static IReadOnlyList<PeakPlace> In(PowerDensity density, double lowest, double highest)
    {
        var first = Math.Max(2, (int)Math.Ceiling(lowest / density.BinHertz));
        var last = Math.Min(density.Values.Count - 3, (int)(highest / density.BinHertz));
        if (last - first < 4)
            return [];
        var smooth = Smooth(density.Values);
        var least = Math.Max(LeastExcess, 1 + (ChanceFactor / Math.Sqrt(density.IndependentSegments)));
        var top = Enumerable.Range(first, last - first + 1).Max(bin => smooth[bin]);
        List<PeakPlace> peaks = [];
        for (var bin = first; bin <= last; bin++)
        {
            if (smooth[bin] < smooth[bin - 1] || smooth[bin] <= smooth[bin + 1] || smooth[bin] < LeastShare * top)
                continue;
            var (from, to) = (Dip(smooth, bin, -1, first), Dip(smooth, bin, 1, last));
            var excess = smooth[bin] / Math.Max(Around(density.Values, from), Around(density.Values, to));
            if (excess >= least)
                peaks.Add(new PeakPlace(bin, from, to, excess));
        }

        return [.. peaks.OrderByDescending(peak => smooth[peak.Bin]).Take(Most)];
    }

    // The lowest place on the way to something higher, or to the end.
    private static int Dip(double[] values, int bin, int step, int end)
    {
        var lowest = bin;
        for (var at = bin + step; at != end + step && values[at] <= values[bin]; at += step)
            if (values[at] < values[lowest])
                lowest = at;
        return lowest;
    }

    // The lowest of many values of noise lies below the noise: its neighbours count too.
    private static double Around(IReadOnlyList<double> values, int bin)
    {
        var (from, to) = (Math.Max(0, bin - DipReach), Math.Min(values.Count - 1, bin + DipReach));
        return Enumerable.Range(from, to - from + 1).Average(at => values[at]);
    }

    // One, two, one: no wider than the window.
    private static double[] Smooth(IReadOnlyList<double> values) =>
        [.. values.Select((value, bin) => bin == 0 || bin == values.Count - 1 ? value : (values[bin - 1] + (2 * value) + values[bin + 1]) / 4)];
}
