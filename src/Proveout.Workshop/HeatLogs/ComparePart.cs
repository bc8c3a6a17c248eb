using System.Globalization;
using Proveout.Engine.Heat;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>How a log differs from an earlier one of the same heater.</summary>
internal static class ComparePart
{
    // Loss hangs on the room, and so do rise and time.
    private const double SameRoomKelvin = 3;

    public static (IReadOnlyList<ComparedView> Compared, HeatLogPart Part) Of(LogFile earlier, LogFile now)
    {
        var figures = LogComparison.Of((earlier.WarmUp, earlier.Trace), (now.WarmUp, now.Trace));
        if (figures.Count == 0)
            return ([], HeatLogPart.Nothing with { Findings = ["The two logs have nothing in common to compare: neither full output from cold in both, nor a steady hold in both."], IsFine = false });
        return (
            [.. figures.Select(View)],
            HeatLogPart.Nothing with
            {
                Findings = [.. figures.Select(Words)],
                Remarks = [.. Remarks(earlier, now)],
                Plots = HeatLogPlots.Both(earlier, now) is { } plot ? [plot] : [],
            });
    }

    private static ComparedView View(ComparedFigure figure)
    {
        var (name, unit) = Name(figure);
        FigureView Of(Estimate estimate) => SheetFigures.Of(name, new Uncertain(estimate.Value, estimate.Standard), unit).Figure;
        return new($"{name}, {unit}", Of(figure.Before), Of(figure.After), Of(figure.Difference), figure.Difference.IsBeyondNoise);
    }

    private static string Words(ComparedFigure figure)
    {
        var (name, _) = Name(figure);
        var view = View(figure);
        return figure.Difference.IsBeyondNoise
            ? $"{name}: {view.Before.Words} before, {view.After.Words} now; the difference, {view.Difference.Words}, is beyond noise."
            : $"{name}: {view.Before.Words} before, {view.After.Words} now; the difference, {view.Difference.Words}, may be noise.";
    }

    private static IEnumerable<string> Remarks(LogFile earlier, LogFile now)
    {
        var (before, after) = (WarmUpStretch.Of(earlier.WarmUp)?.FirstCelsius, WarmUpStretch.Of(now.WarmUp)?.FirstCelsius);
        if (Math.Abs((after - before) ?? 0) > SameRoomKelvin)
            yield return string.Create(CultureInfo.InvariantCulture, $"The logs begin {Math.Abs((after - before)!.Value):0.0} K apart: in another room a heater rises and holds otherwise. Compare logs of like rooms.");
        yield return "Beyond noise means beyond what the readings of these two logs scatter. Mains, draughts and what lies on a plate change from day to day and are not in it: log each state twice to see.";
    }

    private static (string Name, string Unit) Name(ComparedFigure figure) => figure.Figure switch
    {
        LogFigure.Rise => (string.Create(CultureInfo.InvariantCulture, $"Rise in {figure.At:0} s of full output"), "K"),
        LogFigure.Time => (string.Create(CultureInfo.InvariantCulture, $"Time for a rise of {figure.At:0} K at full output"), "s"),
        LogFigure.Hold => ("Output that holds a kelvin above the room", "%/K"),
        LogFigure.Steadiness => ("Standard deviation while held", "K"),
        _ => ("How late the sensor is, dead time and second time constant together", "s"),
    };
}
