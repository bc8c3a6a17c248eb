using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>How well a probe repeats, from readings at one place in the order taken.</summary>
/// <param name="Count">Readings.</param>
/// <param name="MeanMillimetres">Mean.</param>
/// <param name="DeviationMillimetres">Standard deviation of one reading.</param>
/// <param name="RangeMillimetres">Highest less lowest.</param>
/// <param name="Outlier">Index of a reading that does not belong to the others (Grubbs, 5 %); null when none is proved.</param>
/// <param name="DriftMillimetres">Change from first to last reading by a fitted line, with its standard uncertainty (twice it covers 95 %); null below three readings.</param>
public sealed record ProbeSeries(int Count, double MeanMillimetres, double DeviationMillimetres, double RangeMillimetres, int? Outlier, Uncertain? DriftMillimetres)
{
    /// <summary>True when the drift is surely other than none.</summary>
    public bool IsDrifting => DriftMillimetres is { } drift && Math.Abs(drift.Value) > drift.Expanded;

    /// <summary>Analyses readings; null below two.</summary>
    public static ProbeSeries? Of(IReadOnlyList<double> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count < 2)
            return null;
        var mean = readings.Average();
        var deviation = Math.Sqrt(readings.Sum(reading => (reading - mean) * (reading - mean)) / (readings.Count - 1));
        return new(readings.Count, mean, deviation, readings.Max() - readings.Min(), Grubbs.Outlier(readings), DriftOf(readings));
    }

    /// <summary>
    /// Readings to average so that their mean is known within a half-width with 95 %: the least n with t(n₀ − 1) s / √n within it,
    /// s and its degrees of freedom from this series (JCGM 100:2008, 4.2.3 and G.3.2).
    /// </summary>
    public int SamplesFor(double halfWidthMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(halfWidthMillimetres);
        var ratio = StudentT.Factor(0.95, Count - 1) * DeviationMillimetres / halfWidthMillimetres;
        return (int)Math.Clamp(Math.Ceiling((ratio * ratio) - 1e-9), 1, int.MaxValue);
    }

    private static Uncertain? DriftOf(IReadOnlyList<double> readings)
    {
        if (readings.Count < 3)
            return null;
        var last = readings.Count - 1;
        var fit = LeastSquares.Fit([.. readings.Select((_, index) => new[] { 1, (double)index / last })], [.. readings])!;
        return new(fit.Values[1], fit.Scatter * Math.Sqrt(fit.Cofactors[1, 1]) * StudentT.Factor(0.95, fit.Degrees) / Uncertain.CoverageFactor);
    }
}
