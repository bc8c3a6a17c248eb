namespace Proveout.Engine.Heat;

/// <summary>The curve that a sound heater keeps to at full output, before it is first switched on.</summary>
/// <remarks>
/// Exact limits from two runs: what is shown at any time rises with power and the sensor's share, and falls with heat capacity, loss and the sensor's lag.
/// For the first four the solution of C dT/dt = P − Q(T) compares point by point; the sensor follows a curve that rises.
/// </remarks>
public static class WarmUp
{
    private const double LongestSeconds = 24 * 3600;

    /// <summary>The curve that shows least and the one that shows most, over the same times.</summary>
    /// <param name="design">The heater.</param>
    /// <param name="forSeconds">How long, above zero.</param>
    /// <param name="samples">How many samples, at least 2.</param>
    public static (HeatCurve Least, HeatCurve Most) Limits(HeaterDesign design, double forSeconds, int samples = 400)
    {
        ArgumentNullException.ThrowIfNull(design);
        var step = forSeconds / samples;
        return (Run(design.Coldest), Run(design.Warmest));

        HeatCurve Run(HeaterTrial trial) => HeatCurve.Of(trial, _ => 1, trial.AmbientCelsius, forSeconds, step);
    }

    /// <summary>Seconds after which the slowest sound heater shows its target; a day when it never does.</summary>
    public static double SlowestSeconds(HeaterDesign design) => SecondsOf(design.Coldest, design.TargetCelsius);

    /// <summary>Seconds after which the quickest sound heater shows its target; a day when it never does.</summary>
    public static double QuickestSeconds(HeaterDesign design) => SecondsOf(design.Warmest, design.TargetCelsius);

    // Looked for over ever longer runs, so that a quick block and a slow plate are both sampled finely enough.
    private static double SecondsOf(HeaterTrial trial, double celsius)
    {
        for (var span = 60.0; span <= LongestSeconds; span *= 4)
            if (HeatCurve.Of(trial, _ => 1, trial.AmbientCelsius, span, span / 2000).SecondsTo(celsius) is var seconds && double.IsFinite(seconds))
                return seconds;
        return LongestSeconds;
    }
}
