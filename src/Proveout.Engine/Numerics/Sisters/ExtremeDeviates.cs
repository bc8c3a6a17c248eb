namespace Proveout.Engine.Numerics;

/// <summary>
/// Which of several readings of the same thing do not belong to the others: the generalised extreme Studentized deviate test for any number of
/// outliers up to a bound (B. Rosner, Technometrics 25 (1983) 165-172; NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3).
/// </summary>
/// <remarks>
/// For readings that are near normal. The uncertainty of the instrument is added to their spread, so that readings which differ by less than the
/// instrument can tell never stand out.
/// </remarks>
public static class ExtremeDeviates
{
    /// <summary>Share of sound series in which one reading or more is wrongly said to stand out.</summary>
    public const double Significance = 0.01;

    /// <summary>A reading and this many sisters are the fewest that anything is said of.</summary>
    public const int FewestSisters = 5;

    // With more than a fifth out, there is no "the others" to speak of.
    private const int SoundForEachOutlier = 5;

    /// <summary>Indices of the readings that stand out, furthest first; null when there are too few to tell.</summary>
    /// <param name="readings">Finite readings.</param>
    /// <param name="uncertainty">Standard uncertainty of one reading by its instrument, in the unit of the readings.</param>
    /// <param name="significance">Share of sound series that may be wrongly suspected.</param>
    public static IReadOnlyList<int>? Find(IReadOnlyList<double> readings, double uncertainty, double significance = Significance) =>
        readings.Count <= FewestSisters ? null : Find(readings, uncertainty, significance, 1 + (readings.Count / SoundForEachOutlier));

    /// <summary>The same with a bound on how many may stand out.</summary>
    internal static IReadOnlyList<int> Find(IReadOnlyList<double> readings, double uncertainty, double significance, int most)
    {
        int[] order = [.. Enumerable.Range(0, readings.Count)];
        Array.Sort(readings.ToArray(), order);
        var (first, last) = (0, order.Length - 1);
        // Twice the digits, so that taking a reading off again that is a million times the others leaves theirs as they were.
        var (sum, squares) = (DoubleDouble.Zero, DoubleDouble.Zero);
        foreach (var reading in readings)
            (sum, squares) = (sum + reading, squares + Square(reading));
        // What chance explains grows with the number of readings: between these two limits only is it worked out for each number.
        most = Math.Min(most, readings.Count - 2);
        var (surelyChance, surelyNot) = (Critical(readings.Count - most + 1, significance), Critical(readings.Count, significance));
        var (removed, standing) = (new List<int>(), 0);
        while (removed.Count < most)
        {
            var count = last - first + 1;
            var mean = (double)sum / count;
            var variance = Math.Max(0, (double)(squares - (sum * sum / count)) / (count - 1));
            var index = readings[order[last]] - mean > mean - readings[order[first]] ? order[last--] : order[first++];
            removed.Add(index);
            var deviates = Math.Abs(readings[index] - mean) / Math.Sqrt(variance + (uncertainty * uncertainty));
            if (deviates > surelyNot || (deviates > surelyChance && deviates > Critical(count, significance)))
                standing = removed.Count;
            (sum, squares) = (sum - readings[index], squares - Square(readings[index]));
        }

        return [.. removed.Take(standing)];
    }

    private static DoubleDouble Square(DoubleDouble value) => value * value;

    /// <summary>The largest distance from the mean, in standard deviations, that chance explains among a number of readings.</summary>
    internal static double Critical(int count, double significance)
    {
        var degrees = count - 2;
        var t = StudentT.Factor(1 - (significance / count), degrees);
        return (count - 1) * t / Math.Sqrt((degrees + (t * t)) * count);
    }
}
