namespace Proveout.Engine.Faults;

/// <summary>The scale on which readings of an instrument are compared: a decade weighs the same anywhere, and below the last digit it is even.</summary>
internal static class ReadingScale
{
    // The least that hand-held instruments tell apart, in the check's unit, and the largest value that they show before over range.
    private const double Resolution = 0.1;
    private const double LargestShown = 60e6;

    /// <summary>From zero to the largest value shown.</summary>
    public static double Span { get; } = Of(LargestShown);

    /// <summary>Place of a value: rising, 0 at 0, equal for opposite signs but for the sign.</summary>
    public static double Of(double value) =>
        Math.Sign(value) * Math.Log10(1 + (Math.Min(Math.Abs(value), LargestShown) / Resolution));
}
