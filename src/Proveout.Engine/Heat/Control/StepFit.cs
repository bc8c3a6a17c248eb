using Proveout.Engine.Numerics;

namespace Proveout.Engine.Heat;

/// <summary>A process fitted to the log of a step of its output.</summary>
/// <param name="Model">The process.</param>
/// <param name="Rest">What was measured at rest.</param>
/// <param name="ResidualDeviation">Standard deviation of what the model leaves, in the unit of what is measured.</param>
/// <param name="SettledShare">Share of the way to the end that the log shows, 0 to 1: below 0.9 the gain is a guess.</param>
public sealed record StepFit(ProcessModel Model, double Rest, double ResidualDeviation, double SettledShare)
{
    private const int FewestSamples = 8;

    /// <summary>Fits by least squares: rest and gain exactly for each trial of the times, and these by a search.</summary>
    /// <param name="seconds">Times, rising; the step is made at time 0.</param>
    /// <param name="measured">What is measured then.</param>
    /// <param name="step">By how much the output was raised, as a share of full output; not zero.</param>
    /// <param name="isSecondOrder">True to fit two time constants.</param>
    /// <returns>Null when there are fewer than eight samples after the step, or nothing moves.</returns>
    public static StepFit? Of(IReadOnlyList<double> seconds, IReadOnlyList<double> measured, double step, bool isSecondOrder = false)
    {
        ArgumentNullException.ThrowIfNull(seconds);
        ArgumentNullException.ThrowIfNull(measured);
        if (seconds.Count != measured.Count || seconds.Count(time => time > 0) < FewestSamples || step == 0)
            return null;
        var (start, moved) = Start(seconds, measured);
        if (moved == 0)
            return null;
        double[] at = isSecondOrder ? [Math.Log(start.Slow), Math.Log(start.Slow / 5), start.Dead] : [Math.Log(start.Slow), start.Dead];
        double[] spans = isSecondOrder ? [0.4, 0.8, 0.2 * start.Slow] : [0.4, 0.2 * start.Slow];
        double Squares(double[] trial) => Solve(seconds, measured, Shape(trial)).Squares;
        // A second search from where the first one ended, for a simplex may lie down on the way.
        var times = SimplexSearch.Minimise(Squares, SimplexSearch.Minimise(Squares, at, spans), [.. spans.Select(span => 0.1 * span)]);
        var shape = Shape(times);
        var (rest, gain, squares) = Solve(seconds, measured, shape);
        var model = shape with { Gain = gain / step };
        return double.IsFinite(squares) && gain != 0
            ? new StepFit(model, rest, Math.Sqrt(squares / Math.Max(1, seconds.Count - times.Length - 2)), shape.StepAt(seconds[^1]))
            : null;
    }

    private static ProcessModel Shape(double[] trial)
    {
        var slow = Math.Exp(trial[0]);
        var fast = trial.Length == 3 ? Math.Exp(trial[1]) : 0;
        return new(1, Math.Max(slow, fast), Math.Min(slow, fast), trial[^1]);
    }

    // Two points of the curve, C. L. Smith's: the time constant is 1.5 times what passes between 28.3 % and 63.2 % of the way.
    private static ((double Slow, double Dead) Times, double Moved) Start(IReadOnlyList<double> seconds, IReadOnlyList<double> measured)
    {
        var before = seconds.Index().Where(time => time.Item <= 0).Select(time => measured[time.Index]).DefaultIfEmpty(measured[0]).Average();
        var moved = measured[^1] - before;
        double TimeOf(double share) => seconds.Index().Where(time => time.Item > 0 && (measured[time.Index] - before) / moved >= share).Select(time => time.Item).FirstOrDefault(seconds[^1]);
        var (early, late) = (TimeOf(0.283), TimeOf(0.632));
        var slow = Math.Max(1.5 * (late - early), 1e-3 * seconds[^1]);
        return ((slow, Math.Max(0, late - slow)), moved);
    }

    private static (double AtRest, double Gain, double Squares) Solve(IReadOnlyList<double> seconds, IReadOnlyList<double> measured, ProcessModel shape)
    {
        if (shape.DeadTimeSeconds < 0)
            return (0, 0, double.PositiveInfinity);
        double[] answer = [.. seconds.Select(shape.StepAt)];
        var (meanAnswer, meanMeasured) = (answer.Average(), measured.Average());
        var (both, own) = (0.0, 0.0);
        for (var index = 0; index < answer.Length; index++)
        {
            both += (answer[index] - meanAnswer) * (measured[index] - meanMeasured);
            own += (answer[index] - meanAnswer) * (answer[index] - meanAnswer);
        }

        if (own == 0)
            return (meanMeasured, 0, double.PositiveInfinity);
        var gain = both / own;
        var rest = meanMeasured - (gain * meanAnswer);
        var squares = 0.0;
        for (var index = 0; index < answer.Length; index++)
            squares += Math.Pow(measured[index] - rest - (gain * answer[index]), 2);
        return (rest, gain, squares);
    }
}
