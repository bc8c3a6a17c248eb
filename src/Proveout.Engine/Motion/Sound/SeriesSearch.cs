namespace Proveout.Engine.Motion;

/// <summary>Looks for the series of tones that explains the peaks of a spectrum, over fundamentals and inharmonicities.</summary>
internal static class SeriesSearch
{
    // A series must explain one of the strongest tones as one of its first partials.
    private const int Strongest = 10;
    private const int FirstPartials = 6;

    // The best of the first look are fitted and scored again.
    private const int SecondLook = 12;

    // How far a peak may lie from its partial, as a share of the partial, besides its own width.
    private const double Reach = 0.012;

    // What a series pays for partials that should be there and are not, and for stiffness that is not needed.
    private const double MissingCost = 0.5;
    private const double StiffnessCost = 0.3;
    private const int HighestPartial = 16;

    // A second series counts as another note when it lies this far off and scores this near.
    private const double AnotherNote = 1.06;
    private const double SameNote = 1.02;

    // Steps that move the eighth partial by less than the reach.
    private static readonly double[] Inharmonicities = [.. Enumerable.Range(0, 32).Select(step => 6.5e-5 * step * step)];

    /// <summary>The best series, how well it explains the peaks (1 at best), and the score of the best other note.</summary>
    public static (PartialSeries Series, double Score, double Other) Best(IReadOnlyList<Peak> peaks, double lowest, double highest)
    {
        var first = Candidates(peaks, lowest, highest).Select(series => (Series: series, Score: Score(series, peaks))).OrderByDescending(item => item.Score);
        var scored = Distinct(first).Take(SecondLook).Select(item => Fitted(item.Series, peaks)).ToArray();
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

    private static IEnumerable<PartialSeries> Candidates(IReadOnlyList<Peak> peaks, double lowest, double highest) =>
        from peak in peaks.Take(Strongest)
        from number in Enumerable.Range(1, FirstPartials)
        from inharmonicity in Inharmonicities
        let hertz = peak.Hertz / new PartialSeries(1, inharmonicity).Hertz(number)
        where hertz >= lowest && hertz <= highest
        select new PartialSeries(hertz, inharmonicity);

    // The best of each note, so that one note does not fill the second look.
    private static IEnumerable<(PartialSeries Series, double Score)> Distinct(IEnumerable<(PartialSeries Series, double Score)> ordered)
    {
        List<double> taken = [];
        foreach (var item in ordered)
        {
            if (taken.Any(hertz => Ratio(hertz, item.Series.FundamentalHertz) < SameNote))
                continue;
            taken.Add(item.Series.FundamentalHertz);
            yield return item;
        }
    }

    private static (PartialSeries Series, double Score) Fitted(PartialSeries series, IReadOnlyList<Peak> peaks)
    {
        var best = (Series: series, Score: Score(series, peaks));
        for (var turn = 0; turn < 2 && Match(best.Series, peaks) is { Count: > 0 } matched; turn++)
        {
            var fitted = SeriesFit.To(matched, best.Series).Series;
            if (Score(fitted, peaks) is var score && score <= best.Score)
                break;
            best = (fitted, score);
        }

        return best;
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
        return Math.Abs(distance) > 2 ? 0 : Math.Exp(-distance * distance);
    }

    private static double Ratio(double one, double other) => Math.Max(one, other) / Math.Min(one, other);
}
