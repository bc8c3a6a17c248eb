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
        var triples = new Option<bool>("--triples") { Description = "Three mistakes at once too, each of which can hurt or destroy; takes a little longer." };
        var command = new ExampleCommand(
            "plan",
            "Show the checks to do on a machine before power, what they catch, and what is left to the eye.",
            "proveout plan samples/alderbrook",
            "proveout plan samples/pennywort --triples",
            "proveout plan samples/pennywort --json --network > pennywort.json")
        {
            options.Machine, options.Json, network, greedy, triples,
        };
        MachineRun.Of(
            command,
            terminal,
            options,
            async run =>
            {
                var planned = await run.PlanAsync(run.Parse.GetValue(greedy));
                var view = PlanViews.Of(planned);
                var threes = run.Parse.GetValue(triples)
                    ? await run.WaitAsync($"Making every three dangerous mistakes of {planned.Machine.Design.Name} together", () => TriplesView.Of(planned, cancellation: run.Cancellation))
                    : null;
                var withNetwork = run.Parse.GetValue(network);
                return run.Show(
                    () => PlanShape.Of(planned, view, threes, withNetwork ? NetworkShape.Of(planned) : null),
                    (withNetwork ? JsonShapes.Dense : JsonShapes.Spread).PlanShape,
                    () => PlanText.Show(terminal, view, threes));
            },
            alsoJson: network);
        return command;
    }
}
