using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout budget</c>.</summary>
internal static class BudgetCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "budget",
            "Add up how far the nozzle may be off over the travel: squareness, straightness, rails, backlash, belt, plate, probe and heat, once as a sum of bounds and once as root sum square.",
            "proveout budget --travel-x 300 --travel-y 300 --square 0.1 --backlash-x 0.05 --backlash-y 0.05 --plate 0.2 --probe 0.01 --limit 0.2",
            "proveout budget --travel-x 300 --travel-y 300 --expansion 23 --warming 15 --keep P-1")
        {
            options.Json,
        };
        var figures = new FigureOptions(BudgetFields.All);
        figures.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json);
            var typed = figures.TypedIn(parse);
            var answer = BudgetSheet.Of(typed);
            if (answer.Value is not { } sheet)
                return terminal.Refuse(answer.Diagnostics, asJson);
            var kept = await keeping.KeepAsync(parse, keep => Measurements.Of("budget", sheet, keep), typed, [], cancellation);
            return kept.Problems.Count > 0 ? terminal.Refuse(kept.Problems, asJson) : SheetText.Show(terminal, "proveout-budget 1", sheet, asJson, [], kept);
        });
        return command;
    }
}
