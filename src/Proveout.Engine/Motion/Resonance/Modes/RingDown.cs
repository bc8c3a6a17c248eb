using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>
/// Frequency and damping from the ringing after a blow: the logarithmic decrement, taken not from single tops but from the amplitude near one frequency in a block that moves along the ringing
/// (moving-block analysis, C. E. Hammond and R. V. Doggett, NASA SP-415 (1975), from memory). Of a ringing that decays exponentially every block does too, by the same law.
/// </summary>
/// <param name="Hertz">Undamped natural frequency.</param>
/// <param name="DampingRatio">Damping ratio.</param>
internal sealed record RingDown(Uncertain Hertz, Uncertain DampingRatio)
{
    // Long enough to keep neighbours a third away out, short enough for a ringing that is gone after a few turns.
    private const int BlockTurns = 4;
    private const double SkippedTurns = 1;
    private const double LeastAboveNoise = 4;
    private const double LeastShare = 0.02;
    private const int LeastPoints = 4;

    // Amplitudes of an exponential lie on a line; a beat of two neighbours does not.
    private const double MostScatter = 0.15;

    /// <summary>What one ringing says; null when it says nothing.</summary>
    /// <param name="ring">The ringing.</param>
    /// <param name="rate">Samples a second.</param>
    /// <param name="hertz">Where to listen.</param>
    public static RingDown? Of(Ring ring, double rate, double hertz)
    {
        var turn = rate / hertz;
        var block = (int)Math.Round(BlockTurns * turn);
        var step = Math.Max(1, (int)Math.Round(turn / 2));
        var first = (int)Math.Round(SkippedTurns * turn);
        if (turn < 4 || ring.After.Count < first + block + (LeastPoints * step))
            return null;
        var noise = ring.Before.Count >= block ? Amplitude(ring.Before, ring.Before.Count - block, block, hertz / rate).Size : 0;
        List<(double Seconds, double Size, double Phase)> points = [];
        for (var start = first; start + block <= ring.After.Count; start += step)
        {
            var (size, phase) = Amplitude(ring.After, start, block, hertz / rate);
            if (size <= Math.Max(LeastAboveNoise * noise, points.Count > 0 ? LeastShare * points[0].Size : 0) || !(size > 0))
                break;
            points.Add((start / rate, size, points.Count == 0 ? phase : Near(phase, points[^1].Phase)));
        }

        return points.Count < LeastPoints ? null : Fit(points, hertz, noise, BlockTurns * turn / step);
    }

    private static RingDown? Fit(List<(double Seconds, double Size, double Phase)> points, double hertz, double noise, double shared)
    {
        List<double[]> design = [.. points.Select(point => new[] { 1, point.Seconds })];
        // Later blocks stand less far above the noise.
        double[] standards = [.. points.Select(point => 0.01 + (noise / point.Size))];
        var sizes = LeastSquares.Fit(design, [.. points.Select(point => Math.Log(point.Size))], standards);
        var phases = LeastSquares.Fit(design, [.. points.Select(point => point.Phase)], standards);
        if (sizes is null || phases is null || sizes.Residuals.Max(Math.Abs) > 3 * MostScatter || RootMean(sizes.Residuals) > MostScatter)
            return null;
        var (decay, damped) = (-sizes.Values[1], (2 * Math.PI * hertz) + phases.Values[1]);
        if (!(decay > 0) || !(damped > 0))
            return null;
        // Blocks overlap, so that their scatter is seen several times: it counts by the root of how often.
        var natural = Math.Sqrt((damped * damped) + (decay * decay));
        var (decayStandard, dampedStandard) = (Standard(sizes, shared), Standard(phases, shared));
        return new RingDown(new(natural / (2 * Math.PI), Uncertain.Combine(dampedStandard, decay / natural * decayStandard) / (2 * Math.PI)), new(decay / natural, decayStandard / natural));
    }

    /// <summary>Several ringings together: the mean by weight, with the larger of what each claims and what they scatter by.</summary>
    public static RingDown? Together(IReadOnlyList<RingDown> rings) => rings.Count == 0 ? null
        : new(Mean([.. rings.Select(ring => ring.Hertz)]), Mean([.. rings.Select(ring => ring.DampingRatio)]));

    private static Uncertain Mean(Uncertain[] figures)
    {
        double[] weights = [.. figures.Select(figure => 1 / (figure.Standard * figure.Standard))];
        var value = figures.Zip(weights, (figure, weight) => weight * figure.Value).Sum() / weights.Sum();
        var claimed = 1 / Math.Sqrt(weights.Sum());
        if (figures.Length == 1)
            return new(value, claimed);
        var seen = Math.Sqrt(figures.Sum(figure => (figure.Value - value) * (figure.Value - value)) / (figures.Length - 1.0) / figures.Length);
        return new(value, Math.Max(claimed, seen));
    }

    private static double Standard(LinearFit fit, double shared) => Math.Sqrt(fit.Cofactors[1, 1] * Math.Max(1e-4, fit.WeightedSquares / fit.Degrees) * Math.Max(1, shared));

    private static double RootMean(IReadOnlyList<double> values) => Math.Sqrt(values.Average(value => value * value));

    private static double Near(double phase, double before) => phase + (2 * Math.PI * Math.Round((before - phase) / (2 * Math.PI)));

    // Hann-weighted mean of the samples turned back by the frequency; the phase is that of the start of the recording.
    private static (double Size, double Phase) Amplitude(IReadOnlyList<double> samples, int start, int length, double turnsBySample)
    {
        var (real, imaginary, mean) = (0.0, 0.0, 0.0);
        for (var index = 0; index < length; index++)
            mean += samples[start + index] / length;
        for (var index = 0; index < length; index++)
        {
            var weight = (0.5 - (0.5 * Math.Cos(2 * Math.PI * (index + 0.5) / length))) * (samples[start + index] - mean);
            var angle = 2 * Math.PI * turnsBySample * (start + index);
            real += weight * Math.Cos(angle);
            imaginary -= weight * Math.Sin(angle);
        }

        return (Math.Sqrt((real * real) + (imaginary * imaginary)) / length, Math.Atan2(imaginary, real));
    }
}
