using System.Globalization;
using Proveout.Engine.Heat;

namespace Proveout.Workshop;

/// <summary>Plots of logs of heaters.</summary>
internal static class HeatLogPlots
{
    private const int MostPoints = 150;

    /// <summary>The log over the band that a sound heater keeps to.</summary>
    public static PlotView Band(LogFile file, WarmUpStretch warmUp, HeaterDesign design)
    {
        var on = warmUp.OnSeconds!.Value;
        var seconds = Math.Min(file.WarmUp.Run.LastsSeconds - on, Math.Max(1.5 * warmUp.FullSeconds, 1.2 * WarmUp.SlowestSeconds(design)));
        var axis = new Times(seconds);
        var (least, most) = WarmUp.Limits(design, seconds, MostPoints);
        var top = 1.3 * Math.Max(design.TargetCelsius, Shown(file.WarmUp, on, seconds, axis).Select(point => point.Up).DefaultIfEmpty(0).Max() / 1.2);
        (double, double)[] Line(HeatCurve curve) => [.. Enumerable.Range(0, curve.Shown.Count).Where(at => curve.Shown[at] <= top).Select(at => (axis.Of(at * curve.StepSeconds), curve.Shown[at]))];
        return new(
            $"{file.Trace.Sensor.Name} against what a sound heater shows at full output",
            string.Create(CultureInfo.InvariantCulture, $"The strong line is the log from when full output began; a sound heater keeps between the two others until the controller throttles, which it does here after {HeatWords.Time(warmUp.FullSeconds)}."),
            axis.Axis,
            new("shown, °C", 0, top),
            [new(Shown(file.WarmUp, on, seconds, axis)), new(Line(least)), new(Line(most))],
            warmUp.FullSeconds < seconds ? [new(axis.Of(warmUp.FullSeconds), "throttled")] : []);
    }

    /// <summary>A step and the process fitted to it.</summary>
    public static PlotView Fit(LogFile file, StepStretch step, StepEstimate fit)
    {
        var seconds = step.Seconds[^1];
        var axis = new Times(seconds);
        var every = Math.Max(1, step.Seconds.Count / MostPoints);
        (double Across, double Up)[] measured = [.. step.Seconds.Index().Where(time => time.Index % every == 0 && time.Item >= 0).Select(time => (axis.Of(time.Item), step.Celsius[time.Index]))];
        (double Across, double Up)[] model = [.. measured.Select((_, at) => at * seconds / Math.Max(1, measured.Length - 1)).Select(time => (axis.Of(time), fit.Rest.Value + ((step.ToOutput - step.FromOutput) * fit.Process.Model.StepAt(time))))];
        var (low, high) = Span([.. measured, .. model]);
        return new(
            $"{file.Trace.Sensor.Name} after the output changed in line {step.Line}",
            string.Create(CultureInfo.InvariantCulture, $"The strong line is the log, the dashed one the process fitted to it; what is left between them has a standard deviation of {fit.ResidualDeviation:0.00} K."),
            axis.Axis,
            new("shown, °C", low, high),
            [new(measured), new(model)],
            []);
    }

    /// <summary>A warm-up with settings that follow from the log.</summary>
    public static PlotView Response(string rule, LoopSimulation response, double target)
    {
        var axis = new Times(response.Seconds[^1]);
        var every = Math.Max(1, response.Seconds.Count / MostPoints);
        (double, double)[] Line(Func<int, double> value) => [.. Enumerable.Range(0, response.Seconds.Count).Where(at => at % every == 0).Select(at => (axis.Of(response.Seconds[at]), value(at)))];
        return new(
            $"Warm-up to come, {rule}",
            string.Create(CultureInfo.InvariantCulture, $"The strong line is what will be shown, the dashed one the output in percent. It reaches {response.Measured.Max():0.#} °C at most."),
            axis.Axis,
            new("shown, °C; output, %", 0, 1.3 * Math.Max(target, 80)),
            [new(Line(at => response.Measured[at])), new(Line(at => 100 * response.Output[at]))],
            []);
    }

    /// <summary>Two logs from when full output began; null when one never has it.</summary>
    public static PlotView? Both(LogFile earlier, LogFile now)
    {
        if (WarmUpStretch.Of(earlier.WarmUp)?.OnSeconds is not { } first || WarmUpStretch.Of(now.WarmUp)?.OnSeconds is not { } second)
            return null;
        var seconds = Math.Min(earlier.WarmUp.Run.LastsSeconds - first, now.WarmUp.Run.LastsSeconds - second);
        var axis = new Times(seconds);
        var (after, before) = (Shown(now.WarmUp, second, seconds, axis), Shown(earlier.WarmUp, first, seconds, axis));
        var (low, high) = Span([.. after, .. before]);
        return new("This log and the earlier one", "The strong line is this log, the dashed one the earlier, both from when full output began.", axis.Axis, new("shown, °C", low, high), [new(after), new(before)], []);
    }

    private static (double Across, double Up)[] Shown(HeaterTrace trace, double from, double seconds, Times axis) =>
        [.. Enumerable.Range(0, MostPoints + 1).Select(at => at * seconds / MostPoints).Select(time => (axis.Of(time), trace.At(trace.Sensor, from + time))).Where(point => double.IsFinite(point.Item2))];

    private static (double Low, double High) Span(IReadOnlyList<(double Across, double Up)> points)
    {
        var (low, high) = (points.Select(point => point.Up).DefaultIfEmpty(0).Min(), points.Select(point => point.Up).DefaultIfEmpty(100).Max());
        var room = Math.Max(1, 0.08 * (high - low));
        return (low - room, high + room);
    }

    private sealed class Times(double seconds)
    {
        private readonly double _unit = seconds > 300 ? 60 : 1;

        public PlotAxis Axis => new(_unit == 60 ? "time, min" : "time, s", 0, Math.Max(seconds, 1e-3) / _unit);

        public double Of(double time) => time / _unit;
    }
}
