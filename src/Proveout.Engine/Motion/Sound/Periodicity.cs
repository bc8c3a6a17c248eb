namespace Proveout.Engine.Motion;

/// <summary>
/// How little a sound differs from itself one period later: the difference function and its cumulative mean of the method YIN
/// (de Cheveigné and Kawahara 2002, J. Acoust. Soc. Am. 111, 1917–1930, equations 6 and 8). It sees the time, not the spectrum, and so is a second opinion.
/// </summary>
internal static class Periodicity
{
    private const double Threshold = 0.15;
    private const int Shortest = 4;

    /// <summary>The normalised difference d' for each lag from 0 to a little above the longest period; d'(0) = 1.</summary>
    public static double[] Difference(SoundBand band, Stretch stretch, double lowest)
    {
        var longest = Math.Min((int)(1.1 * band.RateHertz / lowest), stretch.Length / 2);
        var window = stretch.Length - longest;
        var samples = band.Samples.AsSpan(stretch.Start, stretch.Length);
        var difference = new double[longest + 1];
        difference[0] = 1;
        var sum = 0.0;
        for (var lag = 1; lag <= longest; lag++)
        {
            var value = 0.0;
            for (var index = 0; index < window; index++)
            {
                var step = samples[index] - samples[index + lag];
                value += step * step;
            }

            sum += value;
            difference[lag] = sum > 0 ? value * lag / sum : 1;
        }

        return difference;
    }

    /// <summary>The period that the method itself would choose, in samples and parts of one; null when nothing falls below the threshold.</summary>
    public static double? Period(ReadOnlySpan<double> difference)
    {
        for (var lag = Shortest; lag + 1 < difference.Length; lag++)
        {
            if (difference[lag] >= Threshold)
                continue;
            while (lag + 1 < difference.Length && difference[lag + 1] < difference[lag])
                lag++;
            return lag + 1 < difference.Length ? lag + Refined(difference, lag) : null;
        }

        return null;
    }

    /// <summary>The least d' within 3 % of a period; null when the ring is too short to hold it twice.</summary>
    public static double? At(double[] difference, double period)
    {
        var (from, to) = ((int)Math.Floor(0.97 * period), (int)Math.Ceiling(1.03 * period));
        return from >= 1 && to < difference.Length ? difference[from..(to + 1)].Min() : null;
    }

    private static double Refined(ReadOnlySpan<double> difference, int lag)
    {
        var (left, middle, right) = (difference[lag - 1], difference[lag], difference[lag + 1]);
        var bend = left - (2 * middle) + right;
        return bend > 0 ? Math.Clamp((left - right) / (2 * bend), -0.5, 0.5) : 0;
    }
}
