using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout frame</c>.</summary>
internal static class FrameCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var rail = new Option<string?>("--rail") { Description = "Dial readings along a rail: a table with the columns position and reading.", HelpName = "FILE" };
        var command = new ExampleCommand(
            "frame",
            "Tell from tape, square, feeler and dial how square, flat and straight a frame is, which corner to loosen and which way to push. Power off and unplugged.",
            "proveout frame --ab 300 --bc 300 --cd 300 --da 300 --ac 424.9 --bd 423.6",
            "proveout frame --stop-left 0 --stop-right 0.3 --span 400",
            "proveout frame --rail rail.csv",
            "proveout frame --sees \"touches one stop first\" --sees \"squares come out square\"")
        {
            rail, options.Json,
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
            var file = TextFiles.Read(parse.GetValue(rail));
            if (file.Problem is { } unreadable)
                return terminal.Refuse([unreadable], asJson);
            var typed = figures.TypedIn(parse);
            var seen = FrameSeen.Answers(seeing.Sees(parse), seeing.Reads(parse));
            if (seen.Value is not { } answers)
                return terminal.Refuse(seen.Diagnostics, asJson);
            var answer = FrameSheet.Of(new FrameRequest(typed, file.Text) { Seen = answers });
            if (answer.Value is not { } sheet)
                return terminal.Refuse(answer.Diagnostics, asJson);
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of("frame", sheet, keep), typed, file.Text is { } text ? [Measurements.FileOf(text)] : [], cancellation);
            return kept.Problems.Count > 0 ? terminal.Refuse(kept.Problems, asJson) : SheetText.Show(terminal, "proveout-frame 1", sheet, asJson, [], kept);
        });
        return command;
    }
}
