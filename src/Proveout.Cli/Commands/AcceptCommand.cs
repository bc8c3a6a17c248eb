using System.CommandLine;
using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout accept MACHINE</c>: what to watch, prove and look at again from the first run on.</summary>
internal static class AcceptCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var folder = new Option<string?>("--out") { Description = "Folder to write the list and the calendar to.", HelpName = "FOLDER" };
        var first = new Option<string?>("--first-run") { Description = "Day of the first run, for the calendar; today when left out.", HelpName = "YYYY-MM-DD" };
        var hours = new Option<string>("--hours-a-week") { Description = "How long the machine works in a week, for the calendar.", HelpName = "NUMBER", DefaultValueFactory = _ => "10" };
        var command = new ExampleCommand(
            "accept",
            "Say what to watch on the first run, which protection to make act once, how long to soak, and what to look at again after 1, 10, 50 hours and every year; with a calendar.",
            "proveout accept samples/alderbrook --out paper --first-run 2026-12-01 --hours-a-week 12")
        {
            options.Machine, first, hours, folder, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            var (day, week) = (DayOf(run.Parse.GetValue(first)), HoursOf(run.Parse.GetValue(hours)!));
            if (new[] { day.Diagnostics, week.Diagnostics }.SelectMany(problems => problems).ToArray() is { Length: > 0 } wrong)
                return terminal.Refuse(wrong, run.AsJson);
            var view = await run.WaitAsync($"Running {run.Machine.Design.Name} live", () => AcceptanceList.Of(run.Machine));
            return run.Parse.GetValue(folder) is { } into
                ? Write(terminal, view, [.. AcceptanceFiles.Of(view), AcceptanceCalendar.Of(view, day.Value!.Value, week.Value!.Value)], into, run.AsJson)
                : run.Show(() => AcceptanceShape.Of(view), JsonShapes.Spread.AcceptanceShape, () => Show(terminal, view));
        });
        return command;
    }

    private static Outcome<Day> DayOf(string? text) =>
        text is null ? Outcome.Of(new Day(DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)))
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? Outcome.Of(new Day(day))
        : Outcome.Refused<Day>([new Diagnostic("wrong-option", new("--first-run", 0, 0), $"`{text}` is not a day.", "Write year, month and day: 2026-12-01.")]);

    private static Outcome<Week> HoursOf(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var hours) && hours is > 0 and <= 168
            ? Outcome.Of(new Week(hours))
            : Outcome.Refused<Week>([new Diagnostic("wrong-option", new("--hours-a-week", 0, 0), $"`{text}` is not a number of hours in a week.", "Give a number above 0 and up to 168.")]);

    private static int Write(Terminal terminal, AcceptanceView view, IReadOnlyList<PaperFile> papers, string folder, bool asJson)
    {
        var written = papers.Select(file => (Path: Path.Combine(folder, file.Name), file.Write)).ToArray();
        if (written.Select(file => SafeFile.TryWrite(file.Path, file.Write)).OfType<Diagnostic>().ToArray() is { Length: > 0 } problems)
            return terminal.Refuse(problems, asJson);
        if (asJson)
            terminal.Show(AcceptanceShape.Of(view), JsonShapes.Spread.AcceptanceShape);
        else
            foreach (var (path, _) in written)
                terminal.Say(path);
        return ExitCode.Fine;
    }

    private static void Show(Terminal terminal, AcceptanceView view)
    {
        foreach (var phase in view.Items.GroupBy(item => item.Phase))
        {
            terminal.Say();
            terminal.Say($"{AcceptanceWords.Of(phase.Key)}:");
            terminal.Warn(AcceptanceView.CautionsOf(phase.Key));
            foreach (var item in phase)
                terminal.Say($"{item.Title}: {item.Instruction} Good: {item.Good} Otherwise: {item.Otherwise} ({item.Source.TrimEnd('.')})");
        }
    }

    private sealed record Day(DateOnly Value);

    private sealed record Week(double Value);
}
