namespace Proveout.Engine.Motion;

/// <summary>The part of a recording that a plucked belt fills, at a rate that is enough for it.</summary>
/// <param name="Samples">Samples.</param>
/// <param name="RateHertz">Samples a second.</param>
/// <param name="HighestHertz">Above this the low-pass filter takes away.</param>
internal sealed record SoundBand(double[] Samples, double RateHertz, double HighestHertz)
{
    // Partials up to about 2 kHz are enough; a belt's die away quickly above.
    private const double LeastRate = 7_000;
    private const double HighPassHertz = 12;

    // Taps on each side of the filter for each sample that is kept, and the edges that a Blackman window of that length gives.
    private const int TapsBySample = 12;
    private const double CutOff = 0.4;
    private const double PassEdge = 0.285;

    /// <summary>Takes away rumble and what lies above the band, and keeps every so many samples.</summary>
    public static SoundBand Of(Recording recording)
    {
        var factor = Math.Max(1, (int)(recording.RateHertz / LeastRate));
        double[] samples = [.. recording.Samples];
        RemoveRumble(samples, recording.RateHertz);
        var rate = recording.RateHertz / factor;
        return factor == 1 ? new(samples, rate, 0.45 * rate) : new(Thinned(samples, factor), rate, PassEdge * rate);
    }

    // Second-order Butterworth high-pass by the bilinear transform; the mean goes first so that it does not ring.
    private static void RemoveRumble(double[] samples, double rate)
    {
        var mean = samples.Average();
        var warped = Math.Tan(Math.PI * HighPassHertz / rate);
        var norm = 1 / (1 + (Math.Sqrt(2) * warped) + (warped * warped));
        var (first, second) = (2 * ((warped * warped) - 1) * norm, (1 - (Math.Sqrt(2) * warped) + (warped * warped)) * norm);
        var (state1, state2) = (0.0, 0.0);
        for (var index = 0; index < samples.Length; index++)
        {
            var sample = (samples[index] - mean) * norm;
            var filtered = sample + state1;
            state1 = (-2 * sample) - (first * filtered) + state2;
            state2 = sample - (second * filtered);
            samples[index] = filtered;
        }
    }

    private static double[] Thinned(double[] samples, int factor)
    {
        var taps = Taps(factor);
        var half = taps.Length / 2;
        var thinned = new double[samples.Length / factor];
        for (var index = 0; index < thinned.Length; index++)
        {
            var from = (index * factor) - half;
            var (first, last) = (Math.Max(0, -from), Math.Min(taps.Length, samples.Length - from));
            var sum = 0.0;
            for (var tap = first; tap < last; tap++)
                sum += taps[tap] * samples[from + tap];
            thinned[index] = sum;
        }

        return thinned;
    }

    // Windowed sinc (Blackman).
    private static double[] Taps(int factor)
    {
        var half = TapsBySample * factor;
        var taps = new double[(2 * half) + 1];
        for (var index = 0; index < taps.Length; index++)
        {
            var place = index - half;
            var turn = Math.PI * (place + half + 1) / (half + 1);
            var window = 0.42 - (0.5 * Math.Cos(turn)) + (0.08 * Math.Cos(2 * turn));
            var phase = 2 * Math.PI * CutOff * place / factor;
            taps[index] = window * (place == 0 ? 1 : Math.Sin(phase) / phase);
        }

        var sum = taps.Sum();
        for (var index = 0; index < taps.Length; index++)
            taps[index] /= sum;
        return taps;
    }
}
