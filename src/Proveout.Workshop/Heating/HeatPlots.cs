using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Plots of what is predicted of heat.</summary>
public static class HeatPlots
{
    /// <summary>The band that a sound heater keeps to at full output from cold.</summary>
    public static PlotView WarmUp(HeatedView body)
    {
        ArgumentNullException.ThrowIfNull(body);
        var seconds = body.Curve[^1].Seconds;
        var inMinutes = seconds > 300;
        var unit = inMinutes ? 60 : 1;
        (double Across, double Up)[] least = [.. body.Curve.Select(point => (point.Seconds / unit, point.Least))];
        (double Across, double Up)[] most = [.. body.Curve.Select(point => (point.Seconds / unit, Math.Min(point.Most, 1.3 * body.TargetCelsius)))];
        return new(
            $"First warm-up of {body.Name} at full output",
            string.Create(
                CultureInfo.InvariantCulture,
                $"A sound heater keeps between both lines: {body.TargetCelsius:0} °C after {HeatWords.Time(body.Seconds.Least)} at the earliest and {HeatWords.Time(body.Seconds.Most)} at the latest. In practice the controller throttles at {body.TargetCelsius:0} °C."),
            new(inMinutes ? "time, min" : "time, s", 0, seconds / unit),
            new("shown, °C", 0, 1.3 * body.TargetCelsius),
            [new(least), new(most)],
            []);
    }
}
