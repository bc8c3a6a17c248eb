namespace Proveout.Engine.Faults;

/// <summary>How likely a reading is when only the interval that it must lie in is known.</summary>
/// <remarks>
/// A reading is a part's deviation plus the meter's. Two independent even contributions of widths (1 - r) and r add up to a trapezoid
/// with flanks r. The interval does not tell r; averaged over r even in 0 to 1/2 the density at share t of the interval is
/// 2 (-t ln t - (1 - t) ln(1 - t)): highest in the middle, falling to the ends. The derivation stands in docs/methods/diagnosis.md.
/// </remarks>
internal static class ReadingLikelihood
{
    private const double ShareOfOverRange = 0.5;

    // The last digit shown is rounded, so that the ends of an interval are as soft as this, in decades.
    private const double Rounding = 0.01;

    // Makes the density even below the middle and as above beyond it have the integral 1: 1 / (ln(2) / 2 + 1/4).
    private const double CutShape = 1.6761;

    /// <summary>Density of a reading on <see cref="ReadingScale"/>, or the probability of over range; 0 outside the interval.</summary>
    public static double Of(double reading, ReadingInterval interval)
    {
        if (!interval.Contains(reading))
            return 0;
        if (interval.IsOverRangeOnly)
            return 1;
        if (double.IsPositiveInfinity(reading))
            return ShareOfOverRange;
        var low = ReadingScale.Of(interval.Low);
        var width = ReadingScale.Of(interval.High) - low + Rounding;
        if (double.IsPositiveInfinity(interval.High))
            return (1 - ShareOfOverRange) / width;
        var share = (ReadingScale.Of(reading) - low + (Rounding / 2)) / width;
        // An instrument that shows no negative values cuts the interval at zero, and nothing is known of how far it would go on.
        return (interval.Low <= 0 ? CutShape * Entropy(Math.Max(share, 0.5)) : 2 * Entropy(share)) / width;
    }

    /// <summary>Density of a reading of which nothing is known.</summary>
    public static double OfAnything(double reading) => double.IsPositiveInfinity(reading) ? ShareOfOverRange : (1 - ShareOfOverRange) / ReadingScale.Span;

    /// <summary>Probability of an outcome of a symptom, all outcomes of the interval being alike.</summary>
    public static double OfSymptom(double outcome, ReadingInterval interval) =>
        !interval.Contains(outcome) ? 0
        : double.IsInfinity(interval.Low) || double.IsInfinity(interval.High) ? 0.5
        : 1 / (Math.Floor(interval.High) - Math.Ceiling(interval.Low) + 1);

    private static double Entropy(double share)
    {
        var inside = Math.Clamp(share, 1e-3, 1 - 1e-3);
        return -(inside * Math.Log(inside)) - ((1 - inside) * Math.Log(1 - inside));
    }
}
