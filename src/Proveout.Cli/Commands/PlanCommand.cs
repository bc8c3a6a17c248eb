using System.CommandLine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout plan MACHINE</c>.</summary>
internal static class PlanCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var network = new Option<bool>("--network") { Description = "With --json: the network, every check that was considered, and the fault dictionary too." };
        var greedy = new Option<bool>("--greedy") { Description = "Choose the checks one by one instead of proving that there is no quicker plan." };
        var command = new ExampleCommand(
            "plan",
            "Show the checks to do on a machine before power, what they catch, and what is left to the eye.",
            "proveout plan samples/alderbrook",
            "proveout plan samples/pennywort --json --network > pennywort.json")
        {
            options.Machine, options.Json, network, greedy,
        };
        command.SetAction(async (parse, cancellation) =>
        {
            var asJson = parse.GetValue(options.Json) || parse.GetValue(network);
            var read = options.FilesOf(parse).Read(options.MachineOf(parse));
            if (read.Value is not { } machine)
                return terminal.Refuse(read.Diagnostics, asJson);
            var planned = await Planning.RunAsync(terminal, machine, parse.GetValue(greedy), cancellation);
            if (asJson)
                ShowJson(terminal, planned, parse.GetValue(network));
            else
                PlanText.Show(terminal, PlanViews.Of(planned));
            return ExitCode.Fine;
        });
        return command;
    }

    private static void ShowJson(Terminal terminal, PlannedMachine planned, bool withNetwork)
    {
        var shapes = withNetwork ? JsonShapes.Dense : JsonShapes.Spread;
        terminal.Show(PlanShape.Of(planned, PlanViews.Of(planned), withNetwork ? NetworkShape.Of(planned) : null), shapes.PlanShape);
    }
}
