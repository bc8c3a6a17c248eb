using Proveout.Engine.Heat;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads a log of a heater, says what it is, and judges it.</summary>
public static class HeatLogJudgement
{
    /// <summary>What the log says, or everything that is wrong with it.</summary>
    /// <param name="request">The log and what goes with it.</param>
    /// <param name="bodies">What the machine heats; empty without a machine file.</param>
    public static Outcome<HeatLogView> Of(HeatLogRequest request, IReadOnlyList<HeatedBody> bodies)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(bodies);
        var typed = new TypedFigures(request.Typed);
        var figures = HeatLogFigures.Read(typed);
        if (typed.Problems.Count > 0)
            return Outcome.Refused<HeatLogView>(typed.Problems);
        var read = LogFile.Read(request.Log, request, figures, bodies);
        if (read.Value is not { } file)
            return Outcome.Refused<HeatLogView>(read.Diagnostics);
        // The earlier log need not have the run or the times of this one.
        var earlier = request.Before is { } before ? LogFile.Read(before, request, figures with { Run = null, From = 0, To = double.PositiveInfinity }, bodies) : null;
        return earlier is { Value: null } ? Outcome.Refused<HeatLogView>(earlier.Diagnostics) : Outcome.Of(View(file, earlier?.Value, figures));
    }

    private static HeatLogView View(LogFile file, LogFile? earlier, HeatLogFigures figures)
    {
        var (warmUp, hold) = (WarmUpStretch.Of(file.WarmUp), HoldStretch.Of(file.Trace));
        var flaws = FlawPart.Of(file);
        var (band, diagnosis) = BandPart.Of(file, warmUp, hold, figures.Room);
        var step = StepStretch.Of(file.WarmUp);
        var room = figures.Room ?? (warmUp is { FirstCelsius: > 5 and < 40 } ? warmUp.FirstCelsius : null);
        var relay = RelayEstimate.Of(file.Trace, room);
        var process = ProcessPart.Of(file, step, relay, room, hold, figures.Target);
        var (compared, ofCompared) = earlier is null ? ([], HeatLogPart.Nothing) : ComparePart.Of(earlier, file);
        HeatLogPart[] parts = [flaws, band, process.Part, ofCompared];
        return new(
            HeatLogWords.What(file, warmUp, hold, step.Found, relay.Found),
            new SheetView(
                [.. parts.SelectMany(part => part.Figures)],
                [.. parts.SelectMany(part => part.Findings)],
                [.. parts.SelectMany(part => part.Steps)],
                [.. parts.SelectMany(part => part.Remarks)],
                parts.All(part => part.IsFine))
            {
                ToSet = [.. process.ToSet],
            },
            diagnosis,
            process.Settings,
            process.Guard,
            compared,
            [.. parts.SelectMany(part => part.Plots)]);
    }
}
