using System.CommandLine;
using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout stages MACHINE</c>: which checks to repeat after what was left for later is fitted.</summary>
internal static class StagesCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "stages",
            "For a machine that is built in stages: the first stage, and after each later fitting the fewest checks that surely catch what its fitting can bring.",
            "proveout stages samples/alderbrook")
        {
            options.Machine, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            if (run.Machine.Design.Later.Count == 0)
                return terminal.Refuse([NothingLater(run.Machine)], run.AsJson);
            var view = await run.WaitAsync($"Planning {run.Machine.Design.Name} stage by stage", () => StageViews.Of(run.Machine, Planning.Desk.Of)!);
            return run.Show(() => StagesShape.Of(view), JsonShapes.Spread.StagesShape, () => Show(terminal, view));
        });
        return command;
    }

    private static Diagnostic NothingLater(LoadedMachine machine) => new(
        "nothing-later",
        new SourcePlace(machine.Path, 0, 0),
        $"Nothing of {machine.Design.Name} is left for later.",
        "Add a section `later`; docs/machine-file.md has an example.");

    private static void Show(Terminal terminal, StagesView view)
    {
        terminal.Say(string.Create(CultureInfo.InvariantCulture, $"First stage: {view.First.Name}. {view.Checks} dead checks, about {view.Minutes:0} minutes; then its own stages of energising."));
        foreach (var fitting in view.Fittings)
        {
            terminal.Say();
            terminal.Say($"After {fitting.Name} is fitted{(fitting.Parts.Count > 0 ? $" ({string.Join(", ", fitting.Parts)})" : "")}: {fitting.Note}");
            terminal.Warn(fitting.Cautions);
            foreach (var setUp in fitting.Table.SetUps)
            {
                terminal.Say($"  {setUp.Title}:");
                foreach (var check in fitting.Table.Checks.Where(check => check.Check.SetUp == setUp.Id))
                    terminal.Say($"    {check.Check.Title}: {check.Expected}");
            }

            foreach (var sentence in fitting.Tugs.Concat(fitting.Again))
                terminal.Say($"  {sentence}");
            terminal.Say(string.Create(
                CultureInfo.InvariantCulture,
                $"  These {fitting.Table.Checks.Count} checks surely catch {fitting.Caught} of the {fitting.Table.Mistakes.Count} mistakes that fitting it can bring; the rest is for eye and tug. The stage before must have passed."));
        }
    }
}
