namespace Proveout.Engine.Motion;

/// <summary>Looks for the series of tones that explains the peaks of a spectrum, over fundamentals and inharmonicities.</summary>
internal static class SeriesSearch
{
    private const double Step = 1.005;

    // How far a peak may lie from its partial, as a share of the partial, besides its own width.
    private const double Reach = 0.012;

    // What a series pays for partials that should be there and are not, and for stiffness that is not needed.
    private const double MissingCost = 0.5;
    private const double StiffnessCost = 0.3;
    private const int HighestPartial = 16;

    // A second series counts as another note when it lies this far off and scores this near.
    private const double AnotherNote = 1.06;

    private static readonly double[] Inharmonicities = [0, 3e-4, 1e-3, 2e-3, 4e-3, 7e-3, 0.011, 0.016, 0.023, 0.032, 0.044, 0.06];

    /// <summary>The best series, how well it explains the peaks (1 at best), and the score of the best other note.</summary>
    public static (PartialSeries Series, double Score, double Other) Best(IReadOnlyList<Peak> peaks, double lowest, double highest)
    {
        var scored = Candidates(peaks, lowest, highest).Select(series => (Series: series, Score: Score(series, peaks))).ToArray();
        if (scored.Length == 0)
            return (default, 0, 0);
        var best = scored.MaxBy(item => item.Score);
        var other = scored.Where(item => Ratio(item.Series.FundamentalHertz, best.Series.FundamentalHertz) > AnotherNote).Select(item => item.Score).DefaultIfEmpty(0).Max();
        return (best.Series, best.Score, other);
    }

    /// <summary>Which peak belongs to which partial: the strongest within reach of each.</summary>
    public static IReadOnlyDictionary<int, Peak> Match(PartialSeries series, IReadOnlyList<Peak> peaks)
    {
        Dictionary<int, Peak> matched = [];
        foreach (var peak in peaks)
        {
            var number = series.Nearest(peak.Hertz);
            if (number <= HighestPartial && Closeness(series, number, peak) > 0.1 && (!matched.TryGetValue(number, out var there) || there.Power < peak.Power))
                matched[number] = peak;
        }

        return matched;
    }

    private static IEnumerable<PartialSeries> Candidates(IReadOnlyList<Peak> peaks, double lowest, double highest)
    {
        if (peaks.Count == 0)
            yield break;
        var top = Math.Min(highest, peaks.Max(peak => peak.Hertz) * 1.02);
        for (var hertz = lowest; hertz <= top; hertz *= Step)
            foreach (var inharmonicity in Inharmonicities)
                yield return new(hertz, inharmonicity);
    }

    private static double Score(PartialSeries series, IReadOnlyList<Peak> peaks)
    {
        var (explained, all, found, furthest) = (0.0, 0.0, 0u, 0);
        foreach (var peak in peaks)
        {
            all += peak.Weight;
            var number = series.Nearest(peak.Hertz);
            var closeness = number <= HighestPartial ? Closeness(series, number, peak) : 0;
            explained += closeness * peak.Weight;
            if (closeness > 0.3)
            {
                found |= 1u << number;
                furthest = Math.Max(furthest, number);
            }
        }

        if (furthest == 0)
            return 0;
        var missing = furthest - System.Numerics.BitOperations.PopCount(found);
        return (explained / all) - (MissingCost * missing / furthest) - (StiffnessCost * Math.Sqrt(series.Inharmonicity));
    }

    private static double Closeness(PartialSeries series, int number, Peak peak)
    {
        var distance = (peak.Hertz - series.Hertz(number)) / ((Reach * peak.Hertz) + peak.StandardHertz);
        return Math.Exp(-distance * distance);
    }

    private static double Ratio(double one, double other) => Math.Max(one, other) / Math.Min(one, other);
}
