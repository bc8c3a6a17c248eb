namespace Proveout.Engine.Heat;

/// <summary>What is compared of two logs.</summary>
public enum LogFigure
{
    /// <summary>Rise at full output in a time that both logs have, in K.</summary>
    Rise,

    /// <summary>Time for a rise at full output that both logs have, in s.</summary>
    Time,

    /// <summary>Output that holds a kelvin above the room, in % for each K.</summary>
    Hold,

    /// <summary>Standard deviation of what is shown while it is held, in K.</summary>
    Steadiness,

    /// <summary>Dead time and second time constant together, in s: how late the sensor is.</summary>
    Lateness,
}

/// <summary>A figure of two logs.</summary>
/// <param name="Figure">What it is.</param>
/// <param name="At">The time or rise that it is taken at; zero where that does not matter.</param>
/// <param name="Before">In the first log.</param>
/// <param name="After">In the second.</param>
public sealed record ComparedFigure(LogFigure Figure, double At, Estimate Before, Estimate After)
{
    /// <summary>Second less first.</summary>
    public Estimate Difference => After.Less(Before);
}

/// <summary>Compares two logs of a heater, such as before and after it was insulated.</summary>
public static class LogComparison
{
    // Rise and time are taken where both logs are well on their way.
    private const double WellOnTheWay = 0.8;

    /// <summary>Every figure that both logs have.</summary>
    public static IReadOnlyList<ComparedFigure> Of(HeaterTrace before, HeaterTrace after) => Of((before, before), (after, after));

    /// <summary>The same where warm-ups were read once more, finer than the whole of a long log.</summary>
    public static IReadOnlyList<ComparedFigure> Of((HeaterTrace WarmUp, HeaterTrace Whole) before, (HeaterTrace WarmUp, HeaterTrace Whole) after)
    {
        var (first, second) = (new Part(before.WarmUp, before.Whole), new Part(after.WarmUp, after.Whole));
        List<ComparedFigure> figures = [];
        if (first.FullSeconds > 0 && second.FullSeconds > 0)
        {
            var seconds = Math.Round(WellOnTheWay * Math.Min(first.FullSeconds, second.FullSeconds));
            figures.Add(new(LogFigure.Rise, seconds, first.RiseIn(seconds), second.RiseIn(seconds)));
            var kelvin = Math.Round(WellOnTheWay * Math.Min(first.RiseIn(first.FullSeconds).Value, second.RiseIn(second.FullSeconds).Value));
            if (kelvin > 0)
                figures.Add(new(LogFigure.Time, kelvin, first.TimeFor(kelvin), second.TimeFor(kelvin)));
        }

        if (first.Hold is { } held && second.Hold is { } later)
        {
            figures.Add(new(LogFigure.Hold, 0, first.HoldOf(held), second.HoldOf(later)));
            figures.Add(new(LogFigure.Steadiness, 0, held.DeviationKelvin, later.DeviationKelvin));
        }

        if (first.Lateness() is { } late && second.Lateness() is { } lateAfter)
            figures.Add(new(LogFigure.Lateness, 0, late, lateAfter));
        return [.. figures.Where(figure => double.IsFinite(figure.Difference.Value) && double.IsFinite(figure.Difference.Standard))];
    }

    private sealed class Part(HeaterTrace trace, HeaterTrace whole)
    {
        // Sensor and class of it are the same in both logs: what remains of a room's reading is noise and draught.
        private const double RoomKelvin = 0.5;

        private readonly WarmUpStretch? _warmUp = WarmUpStretch.Of(trace);
        private readonly double _noise = trace.NoiseKelvin();

        public HoldStretch? Hold { get; } = HoldStretch.Of(whole);

        public double FullSeconds => _warmUp is { OnSeconds: not null, FullSeconds: > 1 } ? _warmUp.FullSeconds : 0;

        private double Step => trace.Run.StepSeconds;

        private double On => _warmUp!.OnSeconds!.Value;

        // Noise of both ends, and the rate times what is not known of the moment at which output rose: a row either way, evenly.
        public Estimate RiseIn(double seconds)
        {
            var rise = trace.At(trace.Sensor, On + seconds) - _warmUp!.StartCelsius;
            var rate = (trace.At(trace.Sensor, On + seconds) - trace.At(trace.Sensor, On + (0.9 * seconds))) / (0.1 * seconds);
            return new(rise, double.Hypot(Math.Sqrt(2) * _noise, rate * Step / Math.Sqrt(3)));
        }

        public Estimate TimeFor(double kelvin)
        {
            foreach (var at in trace.Within(On, On + FullSeconds))
                if (trace.Sensor.Mean[at] - _warmUp!.StartCelsius >= kelvin)
                {
                    var seconds = trace.Seconds[at] - On;
                    var rate = Math.Max(1e-9, (trace.Sensor.Mean[at] - trace.At(trace.Sensor, On + (0.9 * seconds))) / (0.1 * seconds));
                    return new(seconds, double.Hypot(Math.Sqrt(2) * _noise / rate, Step / Math.Sqrt(3)));
                }

            return new(double.NaN, double.NaN);
        }

        public Estimate HoldOf(HoldStretch hold)
        {
            var above = hold.Celsius - (_warmUp?.FirstCelsius ?? double.NaN);
            var share = 100 * hold.Output.Value / above;
            return new(share, share * double.Hypot(hold.Output.Standard / hold.Output.Value, RoomKelvin / above));
        }

        public Estimate? Lateness() => StepStretch.Of(trace).Found is { } step && step.Fit() is { } fit
            ? fit.Process.Of(model => model.DeadTimeSeconds + model.SecondTimeConstantSeconds)
            : null;
    }
}
