namespace Proveout.Engine.Numerics;

/// <summary>Grubbs' test for one outlier, both sides (F. E. Grubbs, Technometrics 11 (1969) 1-21; ISO 5725-2, 7.3.4).</summary>
internal static class Grubbs
{
    /// <summary>Share of sound series in which the test may cry wolf.</summary>
    public const double Significance = 0.05;

    /// <summary>Index of the value that does not belong to the others; null when none is proved not to.</summary>
    public static int? Outlier(IReadOnlyList<double> values)
    {
        if (values.Count < 3)
            return null;
        var mean = values.Average();
        var deviation = Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1));
        var worst = Enumerable.Range(0, values.Count).MaxBy(index => Math.Abs(values[index] - mean));
        return deviation > 0 && Math.Abs(values[worst] - mean) / deviation > Critical(values.Count) ? worst : null;
    }

    /// <summary>The largest distance from the mean, in standard deviations, that chance explains.</summary>
    public static double Critical(int count)
    {
        var t = StudentT.Factor(1 - (Significance / count), count - 2);
        return (count - 1) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2 + (t * t)));
    }
}
