using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>The plots of a motor sheet.</summary>
internal static class MotorPlots
{
    private const int Columns = 120;

    public static IEnumerable<PlotView> Of(MotorCase parts, LoadView? load)
    {
        if (parts.Drive is { HoldsCurrent: true } drive)
            yield return Torque(parts, drive, load);
        if (parts.Belt is { } belt)
            yield return Resonance(belt);
    }

    private static PlotView Torque(MotorCase parts, StepperDrive drive, LoadView? load)
    {
        var corner = 1000 * parts.Axis.MetresPerSecond(drive.CornerRadiansPerSecond);
        var last = Math.Min(1000 * parts.Axis.MetresPerSecond(drive.HighestRadiansPerSecond), Math.Max(4 * corner, 1.2 * (1000 * parts.MetresPerSecond ?? 0)));
        PlotLine curve = new([.. Enumerable.Range(0, Columns + 1).Select(at => at * last / Columns).Select(speed => (speed, Math.Max(0, drive.TorqueAt(parts.Axis.RadiansPerSecond(speed / 1000)))))]);
        PlotMark[] marks = parts.MetresPerSecond is { } asked ? [new(corner, "corner"), new(1000 * asked, "asked")] : [new(corner, "corner")];
        return new PlotView(
            "Torque over speed",
            string.Create(CultureInfo.InvariantCulture, $"{SensibleDigits.Of(drive.TorqueAt(0))} N·m up to {SensibleDigits.Of(corner)} mm/s, falling from there.{(load is null ? "" : $" The line across is what the movement needs, {SensibleDigits.Of(load.NeededNewtonMetres)} N·m.")}"),
            new PlotAxis("speed of the axis, mm/s", 0, last),
            new PlotAxis("torque, N·m", 0, 1.1 * Math.Max(drive.TorqueAt(0), load?.NeededNewtonMetres ?? 0)),
            load is null ? [curve] : [curve, new PlotLine([(0, load.NeededNewtonMetres), (last, load.NeededNewtonMetres)])],
            marks);
    }

    private static PlotView Resonance(BeltCase belt)
    {
        (double Across, double Up)[] points = [.. Enumerable.Range(0, Columns + 1)
            .Select(at => belt.ShortestRun + (at * (belt.LongestRun - belt.ShortestRun) / Columns))
            .Select(run => (1000 * (run - belt.ShortestRun), belt.Mass.ResonanceHertz(run)))];
        var (low, high) = (points.Min(point => point.Up), points.Max(point => point.Up));
        return new PlotView(
            "First resonance over the travel",
            string.Create(CultureInfo.InvariantCulture, $"Between {SensibleDigits.Of(low)} Hz and {SensibleDigits.Of(high)} Hz."),
            new PlotAxis("place from the motor's end, mm", 0, points[^1].Across),
            new PlotAxis("first resonance, Hz", 0, 1.1 * high),
            [new PlotLine(points)],
            []);
    }
}
