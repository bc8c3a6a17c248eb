namespace Proveout.Engine.Heat;

/// <summary>What a loop will do, before it does it: a step of what is wanted, with an output that has ends.</summary>
/// <param name="Seconds">Times.</param>
/// <param name="Measured">What is measured then.</param>
/// <param name="Output">Output then, 0 to 1.</param>
/// <param name="Overshoot">How far what is measured goes beyond what is wanted, in its unit.</param>
/// <param name="SettledSeconds">When it stays within the band for good; null when it does not within the time simulated.</param>
public sealed record LoopSimulation(IReadOnlyList<double> Seconds, IReadOnlyList<double> Measured, IReadOnlyList<double> Output, double Overshoot, double? SettledSeconds)
{
    // The derivative acts on what is measured, through a filter of a tenth of its time: common practice.
    private const double FilterShare = 0.1;

    /// <summary>Simulates from rest, with the integral held while the output is at an end and would go further (conditional integration).</summary>
    /// <param name="model">The process; at output 0 it rests at <paramref name="rest"/>.</param>
    /// <param name="tuning">The controller.</param>
    /// <param name="rest">What is measured at the start.</param>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="band">Half of the band around it within which it counts as settled, above zero.</param>
    /// <param name="forSeconds">How long, above zero.</param>
    public static LoopSimulation Of(ProcessModel model, Tuning tuning, double rest, double wanted, double band, double forSeconds)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(tuning);
        var step = Math.Min(forSeconds / 2000, Math.Max(model.TimeConstantSeconds / 500, 1e-3));
        var count = (int)Math.Ceiling(forSeconds / step) + 1;
        var (seconds, measured, output) = (new double[count], new double[count], new double[count]);
        var delay = (int)Math.Round(model.DeadTimeSeconds / step);
        var (keepSlow, keepFast) = (Math.Exp(-step / model.TimeConstantSeconds), model.SecondTimeConstantSeconds > 0 ? Math.Exp(-step / model.SecondTimeConstantSeconds) : 0);
        var (inner, outer, integral, filtered) = (0.0, 0.0, 0.0, rest);
        var filter = tuning.DerivativeSeconds > 0 ? Math.Exp(-step / (FilterShare * tuning.DerivativeSeconds)) : 0;
        for (var at = 0; at < count; at++)
        {
            (seconds[at], measured[at]) = (at * step, rest + outer);
            var error = wanted - measured[at];
            var smoothed = (filter * filtered) + ((1 - filter) * measured[at]);
            var derivative = at == 0 ? 0 : -tuning.DerivativeSeconds * (smoothed - filtered) / step;
            filtered = smoothed;
            var asked = (tuning.Gain * (error + derivative)) + integral;
            output[at] = Math.Clamp(asked, 0, 1);
            if (asked == output[at] || (asked > 1) == (error < 0))
                integral += tuning.Gain * error * step / tuning.IntegralSeconds;
            // Each lag answers its input, held over the step, exactly.
            var input = model.Gain * (at >= delay ? output[at - delay] : 0);
            inner = (keepFast * inner) + ((1 - keepFast) * input);
            outer = (keepSlow * outer) + ((1 - keepSlow) * inner);
        }

        var last = Array.FindLastIndex(measured, value => Math.Abs(value - wanted) > band);
        return new(seconds, measured, output, Math.Max(0, measured.Max() - wanted), last + 1 < count ? seconds[last + 1] : null);
    }
}
