namespace Proveout.Engine.Heat;

/// <summary>Settings of a controller for a process known from a log, and what they will do.</summary>
/// <param name="Rule">Whose rule they follow.</param>
/// <param name="Tuning">The settings.</param>
/// <param name="ClosedLoopSeconds">Closed-loop time constant that they were made for; zero for rules that have none.</param>
/// <param name="Sensitivity">Ms with the process as fitted.</param>
/// <param name="WorstSensitivity">Largest Ms with any process that the log allows.</param>
/// <param name="Response">Warm-up with them; null when the target cannot be held.</param>
public sealed record LoopSettings(string Rule, Tuning Tuning, double ClosedLoopSeconds, double Sensitivity, double WorstSensitivity, LoopSimulation? Response)
{
    /// <summary>A loop is robust up to here, nervous above (Åström and Hägglund 1995).</summary>
    public const double MostSensitivity = 1.8;

    // Output and sensor are served about once a second: together they are late by that much. Common practice.
    private const double ServiceSeconds = 1;

    private const double BandKelvin = 1;
    private const double Slower = 1.25;

    /// <summary>Whether it is robust whatever process of those that the log allows it is.</summary>
    public bool IsRobust => WorstSensitivity <= MostSensitivity;

    /// <summary>Settings by every rule that serves; those to take stand first.</summary>
    /// <param name="process">The process.</param>
    /// <param name="rest">What is shown without any output.</param>
    /// <param name="target">What is to be held.</param>
    public static IReadOnlyList<LoopSettings> For(ProcessEstimate process, double rest, double target)
    {
        ArgumentNullException.ThrowIfNull(process);
        var model = process.Model;
        var first = model.Halved();
        var pi = Slowed("SIMC, PI", seconds => TuningRules.SimcPi(model, seconds), Math.Max(first.DeadTimeSeconds, ServiceSeconds));
        var pid = process.IsSecondOrder ? Slowed("SIMC, PID", seconds => TuningRules.SimcPid(model, seconds), Math.Max(model.DeadTimeSeconds, ServiceSeconds)) : null;
        LoopSettings[] simc = pid is null ? [pi] : [pid, pi];
        // A dead time that the log does not tell from none leaves the ultimate gain open.
        return process.DeadTime.Value > 2 * process.DeadTime.Standard && UltimatePoint.Of(model) is { } ultimate
            ?
            [
                .. simc,
                Made("Tyreus and Luyben, PI", TuningRules.TyreusLuybenPi(ultimate.Gain, ultimate.PeriodSeconds), 0),
                Made("Ziegler and Nichols, PI", TuningRules.ZieglerNicholsPi(ultimate.Gain, ultimate.PeriodSeconds), 0),
                Made("Ziegler and Nichols, PID", TuningRules.ZieglerNicholsPid(ultimate.Gain, ultimate.PeriodSeconds), 0),
            ]
            : simc;

        LoopSettings Slowed(string rule, Func<double, Tuning> tune, double closedLoop)
        {
            while (Worst(process, tune(closedLoop)) > MostSensitivity && closedLoop < 100 * model.TimeConstantSeconds)
                closedLoop *= Slower;
            return Made(rule, tune(closedLoop), closedLoop);
        }

        LoopSettings Made(string rule, Tuning tuning, double closedLoop) =>
            new(rule, tuning, closedLoop, LoopRobustness.LargestSensitivity(Served(model), tuning), Worst(process, tuning), ResponseOf(model, tuning, rest, target));
    }

    private static double Worst(ProcessEstimate process, Tuning tuning) => process.Corners().Max(corner => LoopRobustness.LargestSensitivity(Served(corner), tuning));

    private static ProcessModel Served(ProcessModel model) => model with { DeadTimeSeconds = model.DeadTimeSeconds + ServiceSeconds };

    private static LoopSimulation? ResponseOf(ProcessModel model, Tuning tuning, double rest, double target)
    {
        var share = (target - rest) / model.Gain;
        if (share is not (> 0 and < 0.98))
            return null;
        var full = -model.TimeConstantSeconds * Math.Log(1 - share);
        return LoopSimulation.Of(Served(model), tuning, rest, target, BandKelvin, (3 * full) + (20 * (model.DeadTimeSeconds + model.SecondTimeConstantSeconds + ServiceSeconds)));
    }
}
