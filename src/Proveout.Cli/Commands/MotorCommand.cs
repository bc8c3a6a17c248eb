using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout motor</c>.</summary>
internal static class MotorCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "motor",
            "Compute steps for each millimetre, the current to set, the speed at which torque collapses, acceleration and its margin, and the belt's first resonance.",
            "proveout motor --teeth 20 --current 1.68 --resistance 1.65 --inductance 2.8 --holding-torque 0.44 --mass 0.5 --acceleration 5 --speed 300")
        {
            options.Json,
        };
        var figures = new FigureOptions(MotorFields.All);
        figures.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var typed = figures.TypedIn(parse);
            var sheet = MotorSheet.Of(typed);
            if (sheet.Value is not { } view)
                return terminal.Refuse(sheet.Diagnostics, asJson);
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of(view, keep), typed, [], cancellation);
            return kept.Problems.Count > 0 ? terminal.Refuse(kept.Problems, asJson) : Show(terminal, view, asJson, kept);
        });
        return command;
    }

    private static int Show(Terminal terminal, MotorView view, bool asJson, Kept kept)
    {
        if (asJson)
        {
            terminal.Show(MotorShape.Of(view, kept.Entry), JsonShapes.Spread.MotorShape);
        }
        else
        {
            ShowWords(terminal, view);
            kept.Say(terminal);
        }

        return view.Load is { Verdict: not "enough" } || view.Curve is { HoldsCurrent: false } ? ExitCode.Findings : ExitCode.Fine;
    }

    private static void ShowWords(Terminal terminal, MotorView view)
    {
        var sheet = new Sheet("What", "Figure");
        foreach (var (what, figure) in MotorWords.Rows(view))
            sheet.Add(what, figure);
        terminal.Show(sheet);
        if (view.Curve is { HoldsCurrent: false })
            terminal.Say("The supply cannot drive this current through the resistance even at rest.", Meaning.Bad);
        if (view.Load is { } load)
            terminal.Say(load.Sentence, load.Verdict == "enough" ? Meaning.Good : Meaning.Bad);
    }
}
