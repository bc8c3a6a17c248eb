using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout resonance</c>.</summary>
internal static class ResonanceCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var files = new Argument<string[]>("FILE") { Description = "A table of accelerations with a time column; a second one when each axis was driven alone, x first, then y.", Arity = new ArgumentArity(0, 2) };
        var after = new Option<string[]?>("--after") { Description = "The same after a change, for each FILE: tells what moved, went or grew.", HelpName = "FILE", AllowMultipleArgumentsPerToken = true, Arity = new ArgumentArity(0, 2) };
        var command = new ExampleCommand(
            "resonance",
            "Tell from an accelerometer where a machine rings and how strongly it is damped, which input shaper calms it at what acceleration, and what a change did. Keep hands out of a machine that moves.",
            "proveout resonance x.csv y.csv --excited-by blows",
            "proveout resonance x.csv --excited-by sweep --sweep-keeps acceleration",
            "proveout resonance before.csv --after after.csv")
        {
            files, after, options.Json,
        };
        var choices = ResonanceRequest.Choices.Select(choice => new Option<string?>($"--{choice.Name}")
        {
            Description = $"{choice.Label}: {string.Join(", ", choice.List.Where(item => item.Name.Length > 0).Select(item => item.Name))}.{(choice.List[0].Name.Length > 0 ? $" {choice.List[0].Name} when left out." : " Only where the heading names none.")}",
            HelpName = "NAME",
        }).ToArray();
        foreach (var choice in choices)
            command.Options.Add(choice);
        var figures = new FigureOptions(ResonanceFields.All);
        figures.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var request = new ResonanceRequest(
                [.. (parse.GetValue(files) ?? []).Select(FileOf)],
                [.. (parse.GetValue(after) ?? []).Select(FileOf)],
                ResonanceRequest.Choices.Zip(choices).ToDictionary(pair => pair.First.Name, pair => parse.GetValue(pair.Second) ?? "", StringComparer.Ordinal),
                figures.TypedIn(parse));
            var answer = ResonanceStudy.Of(request);
            if (answer.Value is not { } view)
                return terminal.Refuse(answer.Diagnostics, asJson);
            // Recordings of any length do not belong into a record; the page keeps short ones.
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of("resonance", view.Sheet, keep), figures.TypedIn(parse), [], cancellation);
            return kept.Problems.Count > 0 ? terminal.Refuse(kept.Problems, asJson) : Show(terminal, view, asJson, kept);
        });
        return command;
    }

    // Read as it comes, whatever its length.
    private static ShakeFile FileOf(string path) => new(path, () => new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0, FileOptions.SequentialScan));

    private static int Show(Terminal terminal, ResonanceStudyView view, bool asJson, Kept kept)
    {
        if (asJson)
        {
            terminal.Show(ResonanceShape.Of(view), JsonShapes.Spread.ResonanceShape);
        }
        else
        {
            ShowWords(terminal, view);
            kept.Say(terminal);
        }

        return view.Sheet.IsFine ? ExitCode.Fine : ExitCode.Findings;
    }

    private static void ShowWords(Terminal terminal, ResonanceStudyView view)
    {
        var modes = new Sheet("Axis", "Resonance", "Damping ratio", "From", "Travel, µm");
        foreach (var direction in view.Directions)
            foreach (var mode in direction.Modes)
                modes.Add(direction.Name, mode.Hertz.Words, mode.DampingRatio?.Words ?? "cannot tell", mode.Blows > 0 ? $"{mode.Blows} blows" : "width", Figure($"{mode.TravelMicrometres:0.000}"));
        terminal.Show(modes);
        var shapers = new Sheet("Axis", "Shaper", "Made for, Hz", "Longer by, ms", "Left at most, %", "Left of spectrum, %", "Highest m/s²", "");
        foreach (var direction in view.Directions)
            foreach (var shaper in direction.Shapers)
                shapers.Add(direction.Name, shaper.Name, Figure($"{shaper.Hertz:0.0}"), Figure($"{shaper.DurationMilliseconds:0.0}"), Figure($"{shaper.ResidualPercent:0.0}"), Figure($"{shaper.SpectrumPercent:0.0}"), Figure($"{shaper.HighestAcceleration:0.##}"), shaper.IsBest ? "use this" : "");
        terminal.Show(shapers);
        foreach (var finding in view.Sheet.Findings)
            terminal.Say(finding, view.Sheet.IsFine ? Meaning.Good : Meaning.Bad);
        foreach (var (number, step) in view.Sheet.Steps.Index())
            terminal.Say($"{number + 1}. {step}");
        foreach (var remark in view.Sheet.Remarks)
            terminal.Say(remark);
    }

    private static string Figure(FormattableString text) => FormattableString.Invariant(text);
}
