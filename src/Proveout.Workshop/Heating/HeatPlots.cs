using System.Globalization;

namespace Proveout.Workshop;

/// <summary>Plots of what is predicted of heat.</summary>
public static class HeatPlots
{
    /// <summary>What the loop will do with the settings to start with.</summary>
    public static PlotView Response(HeatedView body, ControllerView controller)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(controller);
        var seconds = controller.Response[^1].Seconds;
        var unit = seconds > 300 ? 60 : 1;
        return new(
            $"Warm-up of {body.Name} with these settings",
            string.Create(CultureInfo.InvariantCulture, $"In the middle of all tolerances: the line is what is shown, the dashed line the output in percent. It reaches {controller.Response.Max(point => point.Celsius):0.#} °C at most."),
            new(unit == 60 ? "time, min" : "time, s", 0, seconds / unit),
            new("shown, °C; output, %", 0, 1.3 * Math.Max(body.TargetCelsius, 80)),
            [
                new([.. controller.Response.Select(point => (point.Seconds / unit, point.Celsius))]),
                new([.. controller.Response.Select(point => (point.Seconds / unit, point.OutputPercent))]),
            ],
            []);
    }

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
