using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout tension</c>.</summary>
internal static class TensionCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var files = new Argument<string[]>("FILE") { Description = "A WAV file of a plucked span; a second one of the other belt of a pair, left first.", Arity = new ArgumentArity(0, 2) };
        var command = new ExampleCommand(
            "tension",
            "Tell the force in a belt from the sound of a plucked span, or from its note; compare a pair; say how far to turn the tensioner. Power off before a hand is at a belt.",
            "proveout tension left.wav right.wav --span 150 --mass 8.1",
            "proveout tension left.wav --span 150 --mass 8.1 --keep P-1",
            "proveout tension --frequency 110 --span 150 --width 6 --target 10")
        {
            files, options.Json,
        };
        var figures = new FigureOptions(SoundingFields.All);
        figures.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var read = (parse.GetValue(files) ?? []).Select(FileOf).ToArray();
            if (read.SelectMany(file => file.Diagnostics).ToArray() is { Length: > 0 } unreadable)
                return terminal.Refuse(unreadable, asJson);
            var typed = figures.TypedIn(parse);
            SoundFile[] recordings = [.. read.Select(file => file.Value!)];
            var answer = Sounding.Of(new SoundingRequest(recordings, typed));
            if (answer.Value is not { } view)
                return terminal.Refuse(answer.Diagnostics, asJson);
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of(view, keep), typed, [.. recordings.Select(Measurements.FileOf)], cancellation);
            return kept.Problems.Count > 0 ? terminal.Refuse(kept.Problems, asJson) : Show(terminal, view, asJson, kept);
        });
        return command;
    }

    private static Outcome<SoundFile> FileOf(string path)
    {
        try
        {
            using var stream = File.OpenRead(path);
            var bytes = new byte[Math.Min(stream.Length, SoundFile.MostBytes + 1)];
            stream.ReadExactly(bytes);
            return Outcome.Of(new SoundFile(path, bytes));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Outcome.Refused<SoundFile>([new Diagnostic("unreadable-file", new SourcePlace(path, 0, 0), "The file cannot be read.", "See that the path is right and that you may read it.")]);
        }
    }

    private static int Show(Terminal terminal, SoundingView view, bool asJson, Kept kept)
    {
        if (asJson)
        {
            terminal.Show(TensionShape.Of(view, kept.Entry), JsonShapes.Spread.TensionShape);
        }
        else
        {
            ShowWords(terminal, view);
            kept.Say(terminal);
        }

        return view.IsFine ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void ShowWords(Terminal terminal, SoundingView view)
    {
        var sheet = new Sheet("Span", "Note", "Force", "Plucks");
        foreach (var belt in view.Belts)
            sheet.Add(belt.Name, belt.Note.Frequency.Words, belt.Force?.Words ?? "not known without length and mass", belt.Note.Plucks > 0 ? $"{belt.Note.Plucks}" : "typed");
        terminal.Show(sheet);
        foreach (var belt in view.Belts)
            foreach (var remark in belt.Remarks)
                terminal.Say($"{belt.Name}: {remark}");
        if (view.Pair is { } pair)
            terminal.Say(pair.Sentence, pair.Verdict == "equal" ? Meaning.Good : Meaning.Bad);
        foreach (var target in view.Target)
            terminal.Say(target.Sentence, target.Verdict == "right" ? Meaning.Good : Meaning.Bad);
        foreach (var turn in view.Turns)
            terminal.Say(turn);
    }
}
