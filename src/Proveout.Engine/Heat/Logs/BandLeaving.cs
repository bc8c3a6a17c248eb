namespace Proveout.Engine.Heat;

/// <summary>Where a log leaves the band that a sound heater keeps to at full output.</summary>
/// <param name="Line">Line of the first row outside.</param>
/// <param name="Seconds">When, from when full output began.</param>
/// <param name="Celsius">What is shown.</param>
/// <param name="Limit">The limit that it crossed.</param>
public sealed record BandLeaving(int Line, double Seconds, double Celsius, double Limit)
{
    // So many rows in a row are no chance.
    private const int Rows = 3;

    /// <summary>The first place; null when it keeps within the band.</summary>
    /// <param name="design">The heater in the room of the log.</param>
    /// <param name="trace">The log.</param>
    /// <param name="warmUp">Its warm-up.</param>
    public static BandLeaving? Of(HeaterDesign design, HeaterTrace trace, WarmUpStretch warmUp)
    {
        ArgumentNullException.ThrowIfNull(trace);
        ArgumentNullException.ThrowIfNull(warmUp);
        if (warmUp.OnSeconds is not { } on || warmUp.FullSeconds < 1)
            return null;
        var (least, most) = WarmUp.Limits(design, warmUp.FullSeconds, 1000);
        var widening = LogCampaign.Widening(design);
        var outside = 0;
        foreach (var at in trace.Within(on, on + warmUp.FullSeconds).Where(at => double.IsFinite(trace.Sensor.Mean[at])))
        {
            var (seconds, shown) = (trace.Seconds[at] - on, trace.Sensor.Mean[at]);
            var (low, high) = (least.ShownAt(seconds) - widening, most.ShownAt(seconds) + widening);
            outside = shown < low || shown > high ? outside + 1 : 0;
            if (outside == Rows)
                return new(trace.Run.Lines[at], seconds, shown, shown < low ? low : high);
        }

        return null;
    }
}
