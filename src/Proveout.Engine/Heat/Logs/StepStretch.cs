namespace Proveout.Engine.Heat;

/// <summary>Why a log has no step that a process can be fitted to.</summary>
public enum StepLack
{
    /// <summary>The log has no output.</summary>
    NoOutput,

    /// <summary>The output is never left alone for long enough after it changed.</summary>
    NoStep,

    /// <summary>What is shown was moving before.</summary>
    NotAtRest,

    /// <summary>What is shown hardly moves after it.</summary>
    NothingMoves,
}

/// <summary>A step of the output in a log, with what is shown before and after.</summary>
/// <param name="AtSeconds">When the output changes.</param>
/// <param name="Line">Its line.</param>
/// <param name="FromOutput">Output before, as a share of full.</param>
/// <param name="ToOutput">Output after.</param>
/// <param name="UntilSeconds">How long it stays.</param>
/// <param name="Seconds">Times at equal distances, from the change.</param>
/// <param name="Celsius">What is shown then.</param>
/// <param name="UncertainSeconds">Time between the last row before and the first after: within it the output changed.</param>
public sealed record StepStretch(
    double AtSeconds, int Line, double FromOutput, double ToOutput, double UntilSeconds, IReadOnlyList<double> Seconds, IReadOnlyList<double> Celsius, double UncertainSeconds)
{
    private const double SameOutput = 0.02;
    private const double LeastStep = 0.05;
    private const double LeastKelvin = 3;
    private const double RestShare = 0.03;
    private const double RestSeconds = 120;

    // More tell no more, and take longer to fit.
    private const int MostSamples = 600;

    /// <summary>The process that answers the step, with its uncertainty; the moment of the change is known to within a row.</summary>
    public StepEstimate? Fit()
    {
        if (StepEstimate.Of(Seconds, Celsius, ToOutput - FromOutput) is not { } fit)
            return null;
        var last = fit.Process.Covariance.GetLength(0) - 1;
        fit.Process.Covariance[last, last] += UncertainSeconds * UncertainSeconds / 12;
        return fit;
    }

    /// <summary>The step after which the output is left alone longest; or why there is none.</summary>
    public static (StepStretch? Found, StepLack? Lack) Of(HeaterTrace trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        if (trace.Output is null)
            return (null, StepLack.NoOutput);
        var lack = StepLack.NoStep;
        foreach (var (before, after) in Steps(trace).OrderByDescending(step => step.After.To - step.After.From))
        {
            var (step, why) = Cut(trace, before, after);
            if (step is not null)
                return (step, null);
            lack = why > lack ? why : lack;
        }

        return (null, lack);
    }

    private static IEnumerable<(Level? Before, Level After)> Steps(HeaterTrace trace)
    {
        List<Level> levels = [];
        for (var at = 0; at < trace.Seconds.Length; at++)
        {
            if (trace.Output!.Mean[at] is var output && double.IsNaN(output))
                continue;
            if (levels.Count > 0 && Math.Abs(levels[^1].Output - output) <= SameOutput)
                levels[^1] = levels[^1] with { To = trace.Seconds[at], Rows = levels[^1].Rows + 1 };
            else
                levels.Add(new(trace.Seconds[at], trace.Seconds[at], output, 1));
        }

        // A thinned row over a change lies between both levels.
        levels = [.. levels.Where((level, index) => level.Rows > 1 || index == 0)];
        foreach (var (index, level) in levels.Index())
            if (level.Rows >= StepEstimate.FewestSamples && (index > 0 ? Math.Abs(level.Output - levels[index - 1].Output) >= LeastStep : level.Output >= LeastStep))
                yield return (index > 0 ? levels[index - 1] : null, level);
    }

    private static (StepStretch? Step, StepLack Lack) Cut(HeaterTrace trace, Level? before, Level after)
    {
        // Without rows before, the output was off and the body cold, if it was: the fit tells by what it leaves.
        var from = before is null ? after.From : Math.Max(before.Value.From, after.From - Math.Max(RestSeconds, 0.1 * (after.To - after.From)));
        double[] shown = [.. trace.Within(after.From, after.To).Select(at => trace.Sensor.Mean[at]).Where(double.IsFinite)];
        if (shown.Length < StepEstimate.FewestSamples || shown.Max() - shown.Min() < Math.Max(LeastKelvin, 10 * trace.NoiseKelvin()))
            return (null, StepLack.NothingMoves);
        double[] rest = [.. trace.Within(from, after.From).Select(at => trace.Sensor.Mean[at]).Where(double.IsFinite)];
        if (rest.Length > 2 && Math.Abs(rest[^1] - rest[0]) > Math.Max(6 * trace.NoiseKelvin(), RestShare * (shown.Max() - shown.Min())))
            return (null, StepLack.NotAtRest);
        var (seconds, celsius) = Spaced(trace, from, after);
        return (new(after.From, trace.LineAt(after.From), before?.Output ?? 0, after.Output, after.To, seconds, celsius, before is null ? trace.Run.StepSeconds : after.From - before.Value.To), StepLack.NoStep);
    }

    private static (double[] Seconds, double[] Celsius) Spaced(HeaterTrace trace, double from, Level after)
    {
        var width = Math.Max((after.To - from) / MostSamples, trace.Run.StepSeconds);
        var groups = trace.Within(from, after.To)
            .Where(at => double.IsFinite(trace.Sensor.Mean[at]))
            .GroupBy(at => Math.Floor((trace.Seconds[at] - after.From) / width))
            .Select(group => (Time: group.Average(at => trace.Seconds[at]) - after.From, Shown: group.Average(at => trace.Sensor.Mean[at])))
            .ToArray();
        return ([.. groups.Select(group => group.Time)], [.. groups.Select(group => group.Shown)]);
    }

    private readonly record struct Level(double From, double To, double Output, int Rows);
}
