namespace Proveout.Engine.Motion;

/// <summary>Finds the fundamental in the free vibration after one stroke.</summary>
internal static class PluckAnalysis
{
    // Least periods in the stretch, and least drop of energy from its first to its last third.
    private const double FewestPeriods = 3;
    private const double LeastDrop = 1.5;

    // A free span holds its pitch; a voice seldom holds it within a percent for a fifth of a second (from memory).
    private const double SteadyShare = 0.015;

    // Clocks of sound cards and telephones: within 100 parts in a million (from memory), and what interpolation between bins leaves.
    private const double ScaleShare = 3e-4;

    // What the mirror image of a tone below zero frequency and its neighbours push a peak by, as a share, over the periods heard (fitted to synthetic plucks).
    private const double FewPeriodsShare = 0.02;

    /// <summary>The pitch after a stroke; null when no tone stands out at all.</summary>
    public static PluckedPitch? Of(SoundBand band, Pluck pluck, PitchRange range)
    {
        var spectrum = Spectrum.Of(band, pluck.Ring);
        var room = pluck.Room.Length > pluck.Ring.Length / 3 ? Spectrum.Of(band, pluck.Room, 2 * (spectrum.Power.Length - 1)) : null;
        var peaks = Peaks.In(spectrum, room, 0.9 * range.LowestHertz, band.HighestHertz);
        var (series, score, other) = SeriesSearch.Best(peaks, range.LowestHertz, range.HighestHertz);
        if (score <= 0)
            return null;
        var partials = SeriesSearch.Match(series, peaks);
        if (partials.Count == 0)
            return null;
        var fit = SeriesFit.To(partials, series);
        partials = SeriesSearch.Match(fit.Series, peaks);
        if (partials.Count == 0)
            return null;
        fit = SeriesFit.To(partials, fit.Series);
        return Judge(band, pluck, spectrum, partials, fit, score, other);
    }

    private static PluckedPitch Judge(
        SoundBand band, Pluck pluck, Spectrum spectrum, IReadOnlyDictionary<int, Peak> partials, SeriesFit fit, double score, double other)
    {
        var hertz = fit.Series.FundamentalHertz;
        List<string> doubts = [];
        var confidence = Math.Clamp(score / 0.8, 0, 1);
        if (score < 0.5)
            doubts.Add("Other tones are about as loud as the span's.");
        confidence *= Weigh(score - other > 0.04, 0.45, "Another fundamental explains the tones about as well.", doubts);
        var periods = spectrum.Seconds * hertz;
        confidence *= Weigh(periods >= FewestPeriods, 0.3, "It rings for too few periods.", doubts);
        var drift = Drift.Of(band, pluck.Ring, partials);
        confidence *= Weigh(Math.Abs(drift) < SteadyShare + (4 * fit.StandardHertz / hertz), 0.3, "The pitch moves while it sounds, as a voice does.", doubts);
        confidence *= Weigh(DiesAway(band, pluck.Ring), 0.4, "It does not die away as a pluck does.", doubts);
        confidence *= Regular(band, pluck.Ring, fit.Series, doubts);
        var few = FewPeriodsShare / (periods * periods);
        // Tones that nothing explains pull at the peaks as well.
        var standard = Math.Pow(Math.Max(0.1, confidence), -2) * Math.Sqrt(
            (fit.StandardHertz * fit.StandardHertz) + (hertz * hertz * ((drift * drift / 12) + (ScaleShare * ScaleShare) + (few * few))));
        return new PluckedPitch(
            hertz,
            standard,
            fit.Series.Inharmonicity,
            fit.StandardInharmonicity,
            [.. partials.OrderBy(item => item.Key).Select(item => new SoundedPartial(item.Key, item.Value.Hertz))],
            confidence,
            pluck.Ring.Start / band.RateHertz,
            pluck.Ring.End / band.RateHertz,
            1,
            doubts);
    }

    private static double Weigh(bool isFine, double otherwise, string doubt, List<string> doubts)
    {
        if (isFine)
            return 1;
        doubts.Add(doubt);
        return otherwise;
    }

    // A stiff span is not periodic, so its difference function says nothing of it.
    private static double Regular(SoundBand band, Stretch ring, PartialSeries series, List<string> doubts)
    {
        if (series.Inharmonicity > 1e-3)
            return 1;
        var difference = Periodicity.Difference(band, ring, 0.9 * series.FundamentalHertz);
        var least = Periodicity.At(difference, band.RateHertz / series.FundamentalHertz);
        return least is null ? 0.9 : Weigh(least < 0.5, 0.5, "The sound does not repeat itself from period to period.", doubts);
    }

    private static bool DiesAway(SoundBand band, Stretch ring)
    {
        var third = ring.Length / 3;
        var (first, middle, last) = (Energy(band, ring.Start, third), Energy(band, ring.Start + third, third), Energy(band, ring.End - third, third));
        return first > middle && middle > last && first > LeastDrop * last;
    }

    private static double Energy(SoundBand band, int start, int length)
    {
        var sum = 0.0;
        foreach (var sample in band.Samples.AsSpan(start, length))
            sum += sample * sample;
        return sum;
    }
}
