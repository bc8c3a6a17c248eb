using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout heat MACHINE</c>: sensors, first warm-up and guard of everything that the machine heats.</summary>
internal static class HeatCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "heat",
            "Predict the first warm-up of everything that the machine heats, what its sensor should read, which mistakes that shows, and what to set its guard to.",
            "proveout heat samples/alderbrook")
        {
            options.Machine, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            if (run.Machine.Design.Heated.Count == 0)
                return terminal.Refuse([NothingHeated(run.Machine)], run.AsJson);
            var view = await run.WaitAsync($"Heating {run.Machine.Design.Name} sound and with every mistake", () => HeatPrediction.Of(run.Machine.Summary, run.Machine.Design));
            return run.Show(() => HeatShape.Of(view), JsonShapes.Spread.HeatShape, () => Show(terminal, view));
        });
        return command;
    }

    private static Diagnostic NothingHeated(LoadedMachine machine) => new(
        "nothing-heated",
        new SourcePlace(machine.Path, 0, 0),
        $"The machine file of {machine.Design.Name} does not say what it heats.",
        "Add a section `heated`; docs/machine-file.md has an example.");

    private static void Show(Terminal terminal, HeatView view)
    {
        foreach (var body in view.Bodies)
        {
            terminal.Say();
            terminal.Say(HeatWords.Summary(body));
            if (body.Guard is { } guard)
                foreach (var sentence in HeatWords.Guard(guard))
                    terminal.Say(sentence);
            else
                terminal.Say("It warms up so slowly near its target that no guard can tell a fallen sensor from it.", Meaning.Bad);
            foreach (var sentence in body.Controller is { } controller ? HeatWords.Controller(controller) : [])
                terminal.Say(sentence);
            ShowSensor(terminal, body);
            MistakeTables.Show(terminal, "Checks of its sensor:", body.Sensor);
            MistakeTables.Show(terminal, "Readings of its first warm-up:", body.WarmUp);
        }
    }

    private static void ShowSensor(Terminal terminal, HeatedView body)
    {
        terminal.Say();
        terminal.Say($"Its sensor, a {body.SensorName}, at the loose plug:");
        var sheet = new Sheet("At", "Ohms", "Shown less true");
        foreach (var point in body.SensorTable)
            sheet.Add(HeatWords.Celsius(point.Celsius), HeatWords.Ohms(point), HeatWords.Error(point));
        terminal.Show(sheet);
    }
}
