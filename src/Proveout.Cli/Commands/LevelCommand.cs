using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout level</c>.</summary>
internal static class LevelCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var map = new Argument<string?>("FILE") { Description = "Heights: a table with the columns x, y and height, or a grid of numbers.", Arity = ArgumentArity.ZeroOrOne };
        var later = FileOption("--later", "The same after an hour of heat: tells what changed.");
        var repeats = FileOption("--repeats", "Repeated readings at one place, a line for each group.");
        var supports = new Option<string?>("--supports") { Description = "Screws or lifts with their places in mm, three or more, or two lifts that only roll, such as \"front left 10 10; front right 290 10; back 150 290\".", HelpName = "LIST" };
        var leave = new Option<string?>("--leave") { Description = "The support to leave as it is.", HelpName = "NAME" };
        var lowers = new Option<bool>("--clockwise-lowers") { Description = "A clockwise turn lowers the plate." };
        var bend = new Option<bool>("--may-bend") { Description = "More than three supports may bend the plate to take a twist out." };
        var drawing = DrawingFiles.Option("Draw lines of equal height and the surface, on A4, to this file; the shape without the tilt and the change with heat beside it.");
        var command = new ExampleCommand(
            "level",
            "Tell from probed heights how a plate lies, which screw to turn how far, what heat changes, and how well the probe repeats. Let the plate cool before a hand goes under it.",
            "proveout level map.csv --supports \"front left 10 10; front right 290 10; back 150 290\" --pitch 0.7",
            "proveout level cold.csv --later hot.csv --drawing plate.svg",
            "proveout level --repeats probe.csv")
        {
            map, later, repeats, supports, leave, lowers, bend, drawing, options.Json,
        };
        var figures = new FigureOptions(LevelFields.All);
        figures.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            ReadText[] files = [TextFiles.Read(parse.GetValue(map)), TextFiles.Read(parse.GetValue(later)), TextFiles.Read(parse.GetValue(repeats))];
            if (files.Select(file => file.Problem).OfType<Engine.Machine.Diagnostic>().ToArray() is { Length: > 0 } unreadable)
                return terminal.Refuse(unreadable, asJson);
            Dictionary<string, string> typed = new(figures.TypedIn(parse), StringComparer.Ordinal) { ["supports"] = parse.GetValue(supports) ?? "", ["leave"] = parse.GetValue(leave) ?? "" };
            var answer = LevelSheet.Of(new LevelRequest(files[0].Text, files[1].Text, typed["supports"], files[2].Text, typed["leave"], parse.GetValue(lowers), parse.GetValue(bend), typed));
            if (answer.Value is not { } sheet)
                return terminal.Refuse(answer.Diagnostics, asJson);
            var drawn = DrawingFiles.Write(parse.GetValue(drawing), sheet.Drawings);
            if (drawn.Value is not { } written)
                return terminal.Refuse(drawn.Diagnostics, asJson);
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of("level", sheet, keep), typed, [.. files.Select(file => file.Text).OfType<NamedText>().Select(Measurements.FileOf)], cancellation);
            return kept.Problems.Count > 0 ? terminal.Refuse(kept.Problems, asJson) : SheetText.Show(terminal, "proveout-level 1", sheet, asJson, written, kept);
        });
        return command;
    }

    private static Option<string?> FileOption(string name, string description) => new(name) { Description = description, HelpName = "FILE" };
}
