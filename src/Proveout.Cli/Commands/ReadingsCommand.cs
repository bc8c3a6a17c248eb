using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout readings MACHINE</c>.</summary>
internal static class ReadingsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var red = new Argument<string?>("RED") { Description = "Terminal of the red lead, such as A1.OUT0+.", Arity = ArgumentArity.ZeroOrOne };
        var black = new Argument<string?>("BLACK") { Description = "Terminal of the black lead.", Arity = ArgumentArity.ZeroOrOne };
        var setUp = new Option<string?>("--set-up") { Description = "State of the machine, as `proveout plan` names it; all that matter when left out.", HelpName = "ID" };
        var shown = new Option<string?>("--shown") { Description = "What the meter shows there: says in which state of the plugs that is right.", HelpName = "OHMS" };
        var command = new ExampleCommand(
            "readings",
            "Show what a meter should read between two terminals, either way round, and why; without terminals, at every check of the plan.",
            "proveout readings samples/pennywort",
            "proveout readings samples/pennywort A1.OUT0+ A1.OUT0- --set-up apart",
            "proveout readings samples/alderbrook B1.1 B1.2 --shown 4k6")
        {
            options.Machine, red, black, setUp, shown, options.Json,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(red) is not null && result.GetValue(black) is null)
                result.AddError("Give the terminals of both leads, or none.");
            if (result.GetValue(shown) is not { } text)
                return;
            if (result.GetValue(black) is null || result.GetValue(setUp) is not null)
                result.AddError("`--shown` asks about two terminals in every state of the plugs: give both terminals, and no set-up.");
            if (ReadingText.TryRead(text) is null)
                result.AddError($"`{text}` is no reading. {ReadingText.Help}");
        });
        MachineRun.Of(command, terminal, options, async run =>
        {
            if (run.Parse.GetValue(red) is not { } first || run.Parse.GetValue(black) is not { } second)
                return ShowAll(run, await run.PlanAsync());
            if (run.Parse.GetValue(setUp) is { } state)
                return ShowBetween(run, ReadingsBetween.Of(run.Machine, first, second, state));
            var shownOhms = run.Parse.GetValue(shown) is { } text ? ReadingText.TryRead(text) : null;
            return PlugStatesText.Show(terminal, run.Machine, ReadingsBetween.InPlugStates(run.Machine, first, second, shownOhms), run.AsJson);
        });
        return command;
    }

    private static int ShowBetween(MachineRun run, Engine.Machine.Outcome<BothWays> readings) => readings.Value is { } both
        ? run.Show(() => BothWaysShape.Of(run.Machine.Design.Name, both), JsonShapes.Spread.BothWaysShape, () => ShowWords(run.Terminal, both))
        : run.Terminal.Refuse(readings.Diagnostics, run.AsJson);

    private static void ShowWords(Terminal terminal, BothWays both)
    {
        terminal.Warn(both.SetUp.Cautions);
        terminal.Say($"Set-up: {both.SetUp.Title}");
        var sheet = new Sheet("Red lead", "Black lead", "Resistance", "Diode test");
        foreach (var reading in new[] { both.One, both.Other })
            sheet.Add(reading.Red.ToString(), reading.Black.ToString(), reading.OhmsInWords, reading.DiodeInWords);
        terminal.Show(sheet);
        terminal.Say(both.One.Reason);
        if (both.Other.Reason != both.One.Reason)
            terminal.Say($"With the leads exchanged: {both.Other.Reason}");
    }

    private static int ShowAll(MachineRun run, PlannedMachine planned)
    {
        CheckShape[] checks = [.. planned.Plan.Checks.Select(check => CheckShape.Of(planned.Explained(check)))];
        return run.Show(
            () => new CheckTableShape("proveout-check-table 1", planned.Machine.Design.Name, checks), JsonShapes.Spread.CheckTableShape, () => ShowTable(run.Terminal, checks));
    }

    private static void ShowTable(Terminal terminal, CheckShape[] checks)
    {
        var sheet = new Sheet("Set-up", "Red lead", "Black lead", "Should read", "Why", "Check");
        foreach (var check in checks)
            sheet.Add(check.SetUp, check.Red, check.Black, check.ExpectedWords, check.Why, check.Id);
        terminal.Show(sheet);
    }
}
