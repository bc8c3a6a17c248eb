using Proveout.Engine.Heat;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A log that was read, with the heater meant in it.</summary>
/// <param name="Log">The log.</param>
/// <param name="Trace">The heater; cut where its reading is stuck.</param>
/// <param name="WarmUp">The same heater over its warm-up, read once more where the log is so long that it was thinned.</param>
/// <param name="Stuck">Where that is; null when it is not.</param>
/// <param name="Body">The heated body of the machine file; null without one.</param>
internal sealed record LogFile(HeatLog Log, HeaterTrace Trace, HeaterTrace WarmUp, LogFlaw? Stuck, HeatedBody? Body)
{
    /// <summary>Reads a log, or says everything that is wrong with it.</summary>
    public static Outcome<LogFile> Read(LogSource source, HeatLogRequest request, HeatLogFigures figures, IReadOnlyList<HeatedBody> bodies)
    {
        if (request.Body.Length > 0 && bodies.Count > 0 && !bodies.Any(body => IsNamed(body, request.Body)))
            return Refused(new("no-such-body", new SourcePlace(source.Name, 0, 0), $"The machine file heats no `{request.Body}`; it heats {Names(bodies)}.", "Name one of them."));
        var named = bodies.FirstOrDefault(body => IsNamed(body, request.Body)) ?? (bodies.Count == 1 ? bodies[0] : null);
        var hints = new LogHints(
            request.Sensor.Length > 0 ? request.Sensor : null, request.Output.Length > 0 ? request.Output : null, figures.FullOutput, (double?)named?.Power.Watts, figures.From, figures.To);
        using var text = source.Open();
        var read = HeatLogReader.Read(text, source.Name, hints);
        if (read.Value is not { } log)
            return Outcome.Refused<LogFile>(read.Diagnostics);
        if (figures.Run > log.Runs.Count)
            return Refused(new("no-such-run", new SourcePlace(source.Name, 0, 0), $"The log has {log.Runs.Count} run{(log.Runs.Count == 1 ? "" : "s")}.", "Name one of them."));
        if (BodyOf(log, named, request.Sensor, bodies) is not { } body)
            return Refused(new("which-body", new SourcePlace(source.Name, 1, 1), $"The machine file heats {Names(bodies)}, and the headings do not tell which this is a log of.", "Say what is heated (--body)."));
        var trace = HeaterTrace.Of(log, figures.Run is { } run ? run - 1 : log.LongestRun, hints, body.Value?.Name ?? (request.Body.Length > 0 ? request.Body : null));
        if (trace.Value is not { } heater)
            return Outcome.Refused<LogFile>(trace.Diagnostics);
        if (!heater.Sensor.Mean.Any(double.IsFinite))
            return Refused(new("no-reading", new SourcePlace(source.Name, heater.Run.FirstLine, 1), $"`{heater.Sensor.Name}` has no reading that a sensor can give: its circuit is open or short.", "Isolate, prove dead, and measure its resistance at the loose plug."));
        var stuck = StuckReading.Of(heater);
        // What full output is, the whole log told; times to leave out are left out already.
        var fine = Again(source, hints with { FullOutput = hints.FullOutput ?? (log.IsFullOutputTaken ? log.FullOutput : null), FromSeconds = 0, ToSeconds = double.PositiveInfinity }, heater, body.Value?.Name);
        return Outcome.Of(new LogFile(log, Cut(heater, stuck), Cut(fine, StuckReading.Of(fine)), stuck, body.Value));
    }

    private static HeaterTrace Cut(HeaterTrace trace, LogFlaw? stuck) => stuck is null ? trace : trace.Until(stuck.Seconds);

    private static HeaterTrace Again(LogSource source, LogHints hints, HeaterTrace heater, string? body)
    {
        if (LogWindow.Of(heater) is not { } window)
            return heater;
        using var text = source.Open();
        var log = HeatLogReader.Read(text, source.Name, hints with { FromLine = window.FromLine, ToLine = window.ToLine }).Value;
        return log is null ? heater : HeaterTrace.Of(log, log.LongestRun, hints, body).Value ?? heater;
    }

    // A body, none because the machine file has none, or null when it cannot be told.
    private static Choice? BodyOf(HeatLog log, HeatedBody? named, string sensor, IReadOnlyList<HeatedBody> bodies)
    {
        if (named is not null || bodies.Count == 0)
            return new(named);
        // A log of several temperatures is of the one whose output it has.
        HeatedBody[] Heads(IEnumerable<string> headings) => [.. bodies.Where(body => headings.Any(heading => heading.Contains(body.Name, StringComparison.OrdinalIgnoreCase)))];
        var byOutput = sensor.Length > 0 ? [] : Heads(log.Runs[0].Outputs.Select(series => series.Name));
        var found = byOutput.Length == 1 ? byOutput : Heads(sensor.Length > 0 ? [sensor] : log.Runs[0].Sensors.Select(series => series.Name));
        return found.Length == 1 ? new(found[0]) : null;
    }

    private static bool IsNamed(HeatedBody body, string name) => body.Name.Equals(name, StringComparison.OrdinalIgnoreCase);

    private static string Names(IEnumerable<HeatedBody> bodies) => string.Join(", ", bodies.Select(body => $"`{body.Name}`"));

    private static Outcome<LogFile> Refused(Diagnostic problem) => Outcome.Refused<LogFile>([problem]);

    private sealed record Choice(HeatedBody? Value);
}
