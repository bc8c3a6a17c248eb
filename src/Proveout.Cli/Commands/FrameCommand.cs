using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout frame</c>.</summary>
internal static class FrameCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var rail = new Option<string?>("--rail") { Description = "Dial readings along a rail: a table with the columns position and reading.", HelpName = "FILE" };
        var points = new Option<string?>("--points") { Description = "Corners in space as drawn, a line each, such as \"A 0 0 0\"; a height over a slab may stand behind.", HelpName = "FILE" };
        var distances = new Option<string?>("--distances") { Description = "Tape readings between them, a line each, such as \"A-B 300.2\".", HelpName = "FILE" };
        var command = new ExampleCommand(
            "frame",
            "Tell from tape, square, feeler and dial how square, flat and straight a frame is, which corner to loosen and which way to push. Power off and unplugged.",
            "proveout frame --ab 300 --bc 300 --cd 300 --da 300 --ac 424.9 --bd 423.6",
            "proveout frame --stop-left 0 --stop-right 0.3 --span 400",
            "proveout frame --rail rail.csv",
            "proveout frame --points corners.txt --distances tape.txt",
            "proveout frame --sees \"touches one stop first\" --sees \"squares come out square\"")
        {
            rail, points, distances, options.Json,
        };
        var figures = new FigureOptions(FrameFields.All);
        figures.AddTo(command);
        var seeing = new SeenOptions();
        seeing.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            ReadText[] files = [TextFiles.Read(parse.GetValue(rail)), TextFiles.Read(parse.GetValue(points)), TextFiles.Read(parse.GetValue(distances))];
            if (files.Select(file => file.Problem).OfType<Engine.Machine.Diagnostic>().ToArray() is { Length: > 0 } unreadable)
                return terminal.Refuse(unreadable, asJson);
            var typed = figures.TypedIn(parse);
            var seen = FrameSeen.Answers(seeing.Sees(parse), seeing.Reads(parse));
            if (seen.Value is not { } answers)
                return terminal.Refuse(seen.Diagnostics, asJson);
            var answer = FrameSheet.Of(new FrameRequest(typed, files[0].Text) { Seen = answers, Points = files[1].Text, Distances = files[2].Text });
            if (answer.Value is not { } sheet)
                return terminal.Refuse(answer.Diagnostics, asJson);
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of("frame", sheet, keep), typed, [.. files.Select(file => file.Text).OfType<NamedText>().Select(Measurements.FileOf)], cancellation);
            return kept.Problems.Count > 0 ? terminal.Refuse(kept.Problems, asJson) : SheetText.Show(terminal, "proveout-frame 1", sheet, asJson, [], kept);
        });
        return command;
    }
}
