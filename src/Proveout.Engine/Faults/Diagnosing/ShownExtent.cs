namespace Proveout.Engine.Faults;

/// <summary>An interval laid on the scale of its check, to the precision that matters for choosing a check.</summary>
/// <param name="Start">Where it starts.</param>
/// <param name="End">Where it ends; beyond the start.</param>
/// <param name="OverShare">Share of its readings that are over range.</param>
internal readonly record struct ShownExtent(double Start, double End, double OverShare)
{
    // Steps of a quarter of a thousandth of a decade; every interval is at least as wide as the rounding of a reading.
    private const double StepsADecade = 4096;
    private const double Rounding = 0.002;
    private const double HalfOutcome = 0.5;

    /// <summary>True when nothing but over range is shown.</summary>
    public bool IsOverOnly => OverShare >= 1;

    /// <summary>The extent of an interval.</summary>
    public static ShownExtent Of(ReadingInterval interval, bool isSymptom) =>
        isSymptom ? new(Math.Max(interval.Low, 0) - HalfOutcome, Finite(interval.High) + HalfOutcome, 0)
        : interval.IsOverRangeOnly ? new(0, 0, 1)
        : new(
            Stepped(ReadingScale.Of(interval.Low) - Rounding),
            Stepped(ReadingScale.Of(interval.High) + Rounding),
            double.IsPositiveInfinity(interval.High) ? 0.5 : 0);

    private static double Finite(double outcome) => double.IsPositiveInfinity(outcome) ? 1 : outcome;

    private static double Stepped(double place) => Math.Round(place * StepsADecade) / StepsADecade;
}
