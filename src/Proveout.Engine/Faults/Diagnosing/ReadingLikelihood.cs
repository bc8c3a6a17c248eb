namespace Proveout.Engine.Faults;

/// <summary>How likely a reading is when only the interval that it must lie in is known.</summary>
internal static class ReadingLikelihood
{
    // A decade of resistance weighs the same anywhere; below a tenth of the unit the instrument's last digit smears the scale.
    private const double Resolution = 0.1;
    private const double LargestShown = 60e6;
    private const double ShareOfOverRange = 0.5;

    /// <summary>Density of a reading on a logarithmic scale, spread evenly over the interval; 0 outside it.</summary>
    public static double Of(double reading, ReadingInterval interval)
    {
        if (!interval.Contains(reading))
            return 0;
        if (interval.IsOverRangeOnly)
            return 1;
        var mayBeOver = double.IsPositiveInfinity(interval.High);
        if (double.IsPositiveInfinity(reading))
            return ShareOfOverRange;
        var top = mayBeOver ? Math.Max(LargestShown, interval.Low) : interval.High;
        var decades = Math.Log10((Math.Max(0, top) + Resolution) / (Math.Max(0, interval.Low) + Resolution));
        return (mayBeOver ? 1 - ShareOfOverRange : 1) / (decades + Resolution);
    }
}
