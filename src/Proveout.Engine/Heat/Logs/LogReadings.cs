using Proveout.Engine.Faults;

namespace Proveout.Engine.Heat;

/// <summary>Why a log does not give one of the readings of a warm-up.</summary>
public enum LogReadingLack
{
    /// <summary>The heater is not told to stay off for long enough before.</summary>
    NotOffLongEnough,

    /// <summary>It was not cold when full output began.</summary>
    NotCold,

    /// <summary>Output is throttled, or the log ends, before.</summary>
    NotFullLongEnough,

    /// <summary>Nothing was logged just then.</summary>
    Gap,

    /// <summary>The log has no other temperature.</summary>
    NoOthers,

    /// <summary>Another heater was on.</summary>
    OthersHeated,

    /// <summary>It was not held steadily for some minutes, or its output is not logged.</summary>
    NotHeld,
}

/// <summary>The readings of a warm-up, taken off a log.</summary>
/// <param name="Readings">Those that it gives.</param>
/// <param name="Lacking">Why it does not give the others, by the identifier of the check.</param>
public sealed record LogReadings(IReadOnlyList<Reading> Readings, IReadOnlyDictionary<string, LogReadingLack> Lacking)
{
    // Warmer than at the first row by this much, it was heated before.
    private const double ColdKelvin = 5;

    private const double OtherIsOn = 0.05;

    /// <summary>Takes the readings.</summary>
    /// <param name="design">The heater in the room of the log; its <see cref="LogCampaign"/> has the checks.</param>
    /// <param name="trace">The log.</param>
    /// <param name="warmUp">Its warm-up.</param>
    /// <param name="hold">Where it is held; null when it is not.</param>
    public static LogReadings Of(HeaterDesign design, HeaterTrace trace, WarmUpStretch warmUp, HoldStretch? hold) =>
        new Taking(new WarmUpReadings(design ?? throw new ArgumentNullException(nameof(design))), design, trace, warmUp, hold).Run();

    private sealed class Taking(WarmUpReadings wanted, HeaterDesign design, HeaterTrace trace, WarmUpStretch warmUp, HoldStretch? hold)
    {
        private readonly List<Reading> _readings = [];
        private readonly Dictionary<string, LogReadingLack> _lacking = new(StringComparer.Ordinal);

        private bool IsCold => Math.Abs(warmUp.StartCelsius - warmUp.FirstCelsius) <= ColdKelvin;

        private double On => warmUp.OnSeconds ?? double.PositiveInfinity;

        public LogReadings Run()
        {
            var ids = HeaterCampaign.CheckIds;
            Take(ids[0], warmUp.OffSeconds < wanted.EarlySeconds ? LogReadingLack.NotOffLongEnough : null, () => Shown(trace.Seconds[0] + wanted.EarlySeconds) - warmUp.FirstCelsius);
            Take(ids[1], FullFor(wanted.EarlySeconds), () => Shown(On + wanted.EarlySeconds) - warmUp.StartCelsius);
            Take(ids[2], Others(), RiseOfOthers);
            Take(ids[3], Timed(), SecondsToEnd);
            Take(ids[4], Held(), () => IsPatient ? ReadingInterval.OverRange : 100 * hold!.Output.Value);
            Take(LogCampaign.LateRise, FullFor(1), () => Shown(On + warmUp.FullSeconds) - warmUp.StartCelsius);
            return new(_readings, _lacking);
        }

        // Full output for all the time that a warm-up is followed at most, and still not there.
        private bool IsPatient => IsCold && warmUp.FullSeconds >= wanted.PatienceSeconds && !(Crossing() < wanted.PatienceSeconds);

        private double Shown(double seconds) => trace.At(trace.Sensor, Math.Min(seconds, trace.Run.LastsSeconds));

        private void Take(string id, LogReadingLack? lack, Func<double> read)
        {
            if (lack is { } known)
                _lacking[id] = known;
            else if (read() is var value && double.IsNaN(value))
                _lacking[id] = LogReadingLack.Gap;
            else
                _readings.Add(new(id, value));
        }

        private LogReadingLack? FullFor(double seconds) =>
            warmUp.OnSeconds is null || warmUp.FullSeconds < seconds ? LogReadingLack.NotFullLongEnough : IsCold ? null : LogReadingLack.NotCold;

        private LogReadingLack? Others() =>
            trace.Others.Count == 0 ? LogReadingLack.NoOthers
            : FullFor(wanted.EarlySeconds) is { } lack ? lack
            : trace.OtherOutputs.Any(output => trace.MeanOf(output, 0, On + wanted.EarlySeconds) > OtherIsOn) ? LogReadingLack.OthersHeated
            : null;

        private double RiseOfOthers() =>
            trace.Others.Select(other => trace.At(other, On + wanted.EarlySeconds) - trace.MeanOf(other, Math.Max(0, On - 10), On)).Where(double.IsFinite).DefaultIfEmpty(double.NaN).Max();

        private LogReadingLack? Timed() =>
            FullFor(1) ?? (double.IsFinite(Crossing()) || warmUp.FullSeconds >= wanted.PatienceSeconds || IsInGap() ? null : LogReadingLack.NotFullLongEnough);

        private double SecondsToEnd() => IsInGap() ? double.NaN : Crossing() is var seconds && seconds > wanted.PatienceSeconds ? ReadingInterval.OverRange : seconds;

        // While output is full; infinite when it is not shown by then.
        private double Crossing()
        {
            var before = double.NaN;
            foreach (var at in trace.Within(On, On + warmUp.FullSeconds))
            {
                var shown = trace.Sensor.Mean[at];
                if (shown >= wanted.EndCelsius)
                    return double.IsFinite(before) && shown > before && at > 0
                        ? trace.Seconds[at] - On - ((shown - wanted.EndCelsius) / (shown - before) * (trace.Seconds[at] - trace.Seconds[at - 1]))
                        : trace.Seconds[at] - On;
                before = shown;
            }

            return double.PositiveInfinity;
        }

        private bool IsInGap() => Crossing() is var seconds && double.IsFinite(seconds) && trace.Run.Gaps.Any(gap => gap.FromSeconds < On + seconds && On + seconds < gap.ToSeconds);

        private LogReadingLack? Held() => IsPatient || (hold is not null && Math.Abs(hold.Celsius - design.TargetCelsius) < 1) ? null : LogReadingLack.NotHeld;
    }
}
