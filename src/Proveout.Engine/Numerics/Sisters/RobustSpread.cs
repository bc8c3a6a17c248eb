namespace Proveout.Engine.Numerics;

/// <summary>Middle and spread of readings, neither moved by a few that are wrong.</summary>
/// <param name="Count">How many readings.</param>
/// <param name="Lowest">The lowest.</param>
/// <param name="Median">The middle one.</param>
/// <param name="Highest">The highest.</param>
/// <param name="Deviation">
/// 1.4826 times the median distance from the median: the standard deviation where the readings are normal (P. J. Rousseeuw and C. Croux,
/// J. Am. Stat. Assoc. 88 (1993) 1273-1283).
/// </param>
public readonly record struct RobustSpread(int Count, double Lowest, double Median, double Highest, double Deviation)
{
    // 1 / (quantile 3/4 of the standard normal distribution).
    private const double ToStandardDeviation = 1.4826;

    /// <summary>The spread of finite readings; null when there are none.</summary>
    public static RobustSpread? Of(IEnumerable<double> readings)
    {
        double[] sorted = [.. readings];
        Array.Sort(sorted);
        if (sorted.Length == 0)
            return null;
        var median = Middle(sorted);
        double[] distances = [.. sorted.Select(reading => Math.Abs(reading - median))];
        Array.Sort(distances);
        return new(sorted.Length, sorted[0], median, sorted[^1], ToStandardDeviation * Middle(distances));
    }

    private static double Middle(double[] sorted) => (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
}
