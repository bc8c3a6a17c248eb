namespace Proveout.Engine.Motion;

/// <summary>How far a pitch moves while it sounds.</summary>
internal static class Drift
{
    /// <summary>Change from the first to the second half of a stretch as a share of the pitch: the mean over the strongest partials, weighted by power.</summary>
    public static double Of(SoundBand band, Stretch ring, IReadOnlyDictionary<int, Peak> partials)
    {
        var half = ring.Length / 2;
        var early = Spectrum.Of(band, new Stretch(ring.Start, ring.Start + half));
        var late = Spectrum.Of(band, new Stretch(ring.End - half, ring.End));
        var (sum, weights) = (0.0, 0.0);
        foreach (var peak in partials.Values.OrderByDescending(peak => peak.Ratio).Take(4))
        {
            if (Near(early, peak.Hertz) is not { } before || Near(late, peak.Hertz) is not { } after)
                continue;
            var weight = Math.Min(late.At(after), early.At(before));
            sum += weight * (after - before) / peak.Hertz;
            weights += weight;
        }

        return weights > 0 ? sum / weights : 0;
    }

    // The highest top within what half the stretch resolves.
    private static double? Near(Spectrum spectrum, double hertz)
    {
        var reach = Math.Max(1.5 / spectrum.Seconds, 0.02 * hertz);
        var from = Math.Max(1, (int)((hertz - reach) / spectrum.BinHertz));
        var to = Math.Min(spectrum.Power.Length - 2, (int)((hertz + reach) / spectrum.BinHertz));
        if (to <= from)
            return null;
        var best = Enumerable.Range(from, to - from + 1).MaxBy(bin => spectrum.Power[bin]);
        return spectrum.Power[best] > spectrum.Power[best - 1] && spectrum.Power[best] >= spectrum.Power[best + 1] ? spectrum.TopHertz(best) : null;
    }
}
