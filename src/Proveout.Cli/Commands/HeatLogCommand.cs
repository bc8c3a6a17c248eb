using System.CommandLine;
using System.Text;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout heat-log</c>: what a log of a heater is, and whether the heater is sound.</summary>
internal static class HeatLogCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var log = new Argument<string>("LOG") { Description = "A table with a line of headings: time, temperature of one or several sensors, output; target if there is one." };
        var before = new Option<string?>("--before") { Description = "An earlier log of the same heater to compare with, such as one without its insulation.", HelpName = "LOG" };
        var machine = new Option<string?>("--machine") { Description = "The machine whose heater it is: its file says how a sound one warms up.", HelpName = "MACHINE" };
        var body = new Option<string?>("--body") { Description = "What is heated, by its name in the machine file; not needed when the headings tell.", HelpName = "NAME" };
        var sensor = new Option<string?>("--sensor") { Description = "Heading of the temperature meant, when there are several.", HelpName = "HEADING" };
        var output = new Option<string?>("--output") { Description = "Heading of the output meant, when there are several.", HelpName = "HEADING" };
        var command = new ExampleCommand(
            "heat-log",
            "Read a log of a heater: hold it against what a sound one would do, name the mistakes that explain it, fit the process, make controller settings and a guard, compare with an earlier log.",
            "proveout heat-log warm-up.csv --machine samples/alderbrook",
            "proveout heat-log relay.csv --room 22 --target 60",
            "proveout heat-log with-sock.csv --before without-sock.csv")
        {
            log, before, machine, body, sensor, output, options.Json,
        };
        var figures = new FigureOptions(HeatLogFields.All);
        figures.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var read = parse.GetValue(machine) is { } named ? options.FilesOf(parse).Read(Places.MachineAt(named)) : null;
            Diagnostic[] problems = [.. read?.Value is null ? read?.Diagnostics ?? [] : [], .. Unreadable(parse.GetValue(log)), .. Unreadable(parse.GetValue(before))];
            if (problems.Length > 0)
                return terminal.Refuse(problems, asJson);
            var request = new HeatLogRequest(
                Source(parse.GetValue(log)!), parse.GetValue(before) is { } earlier ? Source(earlier) : null, parse.GetValue(body) ?? "", parse.GetValue(sensor) ?? "", parse.GetValue(output) ?? "", figures.TypedIn(parse));
            var answer = await Progress.ShowAsync(terminal, "Reading the log", () => HeatLogJudgement.Of(request, [.. read?.Value?.Design.Heated ?? []]), cancellation);
            if (answer.Value is not { } view)
                return terminal.Refuse(answer.Diagnostics, asJson);
            // Logs of any length do not belong into a record; the page keeps short ones.
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of("heat-log", view.Sheet, keep), figures.TypedIn(parse), [], cancellation);
            if (kept.Problems.Count > 0)
                return terminal.Refuse(kept.Problems, asJson);
            var exit = HeatLogText.Show(terminal, view, asJson);
            if (!asJson)
                kept.Say(terminal);
            return exit;
        });
        return command;
    }

    private static LogSource Source(string path) => new(path, () => new StreamReader(path, Encoding.UTF8));

    // Opened once to see that it can be; the use case reads it as it comes in.
    private static IEnumerable<Diagnostic> Unreadable(string? path)
    {
        if (path is null)
            return [];
        try
        {
            using var stream = File.OpenRead(path);
            return [];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return [new Diagnostic("unreadable-file", new SourcePlace(path, 0, 0), "The file cannot be read.", "See that the path is right and that you may read it.")];
        }
    }
}
