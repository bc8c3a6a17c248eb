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
        MachineRun.Of(
            command,
            terminal,
            options,
            async run =>
            {
                var planned = await run.PlanAsync(run.Parse.GetValue(greedy));
                var view = PlanViews.Of(planned);
                var withNetwork = run.Parse.GetValue(network);
                return run.Show(
                    () => PlanShape.Of(planned, view, withNetwork ? NetworkShape.Of(planned) : null),
                    (withNetwork ? JsonShapes.Dense : JsonShapes.Spread).PlanShape,
                    () => PlanText.Show(terminal, view));
            },
            alsoJson: network);
        return command;
    }
}
