namespace Proveout.Engine.Motion;

/// <summary>How a recording was sampled, judged by its first rows. Times are in the unit of the file.</summary>
/// <param name="Interval">Mean time between two samples.</param>
/// <param name="Quantum">Steps in which the times are written, where they make the intervals uneven; 0 where they do not.</param>
/// <param name="Scatter">Standard deviation of the intervals as a share of their mean, without what the steps explain.</param>
internal sealed record SampleClock(double Interval, double Quantum, double Scatter)
{
    /// <summary>
    /// Scatter up to which the samples are taken as evenly spaced: a time that is off by d turns a wave of frequency f by 2 pi f d, so that 2 % of an interval at a tenth of the sampling rate is about 1 %.
    /// </summary>
    public const double EvenScatter = 0.02;

    /// <summary>Scatter beyond which nothing is made of the samples: interpolation between points so uneven is worse than the peaks that are sought (from memory).</summary>
    public const double MostScatter = 0.3;

    // Share of intervals that may lie outside half to one and a half of the mean: single gaps and late stamps.
    private const double MostOutside = 0.05;
    private const int Rounds = 12;

    // Rounding to steps q gives intervals of two neighbouring steps, at most q / 2 about their mean.
    private const double ExplainedByQuantum = 0.525;

    /// <summary>True when the samples are taken as they are.</summary>
    public bool IsEven => Scatter <= EvenScatter;

    /// <summary>True when a time between two samples continues the recording.</summary>
    public bool Continues(double between) =>
        IsEven ? between >= (0.5 * Interval) - Quantum && between <= (1.5 * Interval) + Quantum : between > 0 && between <= (3 * Interval) + Quantum;

    /// <summary>True when a row repeats the time before it, which coarse steps of time do not explain.</summary>
    public bool Repeats(double between) => between == 0 && Quantum < Interval / 2;

    /// <summary>The clock of some times; null when they do not advance.</summary>
    /// <param name="times">Times of the first rows.</param>
    /// <param name="power">Power of ten of the last digit that is written.</param>
    public static SampleClock? Of(ReadOnlySpan<double> times, int power)
    {
        var quantum = Math.Max(Math.Pow(10, power), times.Length == 0 ? 0 : 2 * Math.BitIncrement(Math.Abs(times[^1])) - (2 * Math.Abs(times[^1])));
        double[] between = new double[Math.Max(0, times.Length - 1)];
        for (var index = 0; index < between.Length; index++)
            between[index] = times[index + 1] - times[index];
        var (mean, scatter) = Moments(between, 0, double.PositiveInfinity);
        for (var round = 0; round < Rounds && mean > 0; round++)
            (mean, scatter) = Moments(between, 0, (3 * mean) + quantum);
        if (!(mean > 0))
            return null;
        var (low, high) = ((0.5 * mean) - quantum, (1.5 * mean) + quantum);
        if (between.Count(value => value >= low && value <= high) >= (1 - MostOutside) * between.Length)
            (mean, scatter) = Moments(between, low, high);
        // Steps that the times happen to fall on evenly hide nothing.
        quantum = scatter <= EvenScatter * mean ? 0 : quantum;
        return new SampleClock(mean, quantum, Unexplained(scatter, quantum) / mean);
    }

    /// <summary>What the steps of time do not explain of a scatter.</summary>
    public static double Unexplained(double scatter, double quantum) => scatter <= ExplainedByQuantum * quantum ? 0 : scatter;

    private static (double Mean, double Scatter) Moments(double[] between, double low, double high)
    {
        double[] taken = [.. between.Where(value => value >= low && value <= high)];
        if (taken.Length == 0)
            return (0, 0);
        var mean = taken.Average();
        return (mean, Math.Sqrt(taken.Average(value => (value - mean) * (value - mean))));
    }
}
