using System.CommandLine;
using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout walk MACHINE</c>.</summary>
internal static class WalkCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "walk",
            "Show the walk round a machine: what eye, tug, hand and label should find where no reading tells.",
            "proveout walk samples/pennywort")
        {
            options.Machine, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            var view = WalkRound.Of(await run.PlanAsync());
            return run.Show(() => WalkShape.Of(view), JsonShapes.Spread.WalkShape, () => Show(terminal, view));
        });
        return command;
    }

    private static void Show(Terminal terminal, WalkView view)
    {
        terminal.Say(view.Coverage);
        IReadOnlyList<string> before = [];
        foreach (var place in view.Places)
        {
            terminal.Say();
            terminal.Say(place.SetUp.Title);
            terminal.Warn(place.SetUp.Cautions.SequenceEqual(before) ? [] : place.SetUp.Cautions);
            before = place.SetUp.Cautions;
            foreach (var instruction in place.SetUp.Instructions)
                terminal.Say(instruction);
            var sheet = new Sheet("By", "What to do", "Should be", "Shows");
            foreach (var check in place.Checks)
                sheet.Add(check.Check.Kind, check.Check.Instruction, check.Expected, check.Shows.ToString(CultureInfo.InvariantCulture));
            terminal.Show(sheet);
        }
    }
}
