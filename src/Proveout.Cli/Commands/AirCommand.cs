using System.CommandLine;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout air MACHINE</c>: heat, flow and temperature of the air in every bay.</summary>
internal static class AirCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "air",
            "Predict the air in every bay of the machine: what gives off heat, what the fans move, how warm it gets at each part, and which checks show which mistake.",
            "proveout air samples/alderbrook")
        {
            options.Machine, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            if (run.Machine.Design.Bays.Count == 0)
                return terminal.Refuse([NoBays(run.Machine)], run.AsJson);
            var view = await run.WaitAsync($"Airing {run.Machine.Design.Name} sound and with every mistake", () => AirPrediction.Of(run.Machine.Summary, run.Machine.Design));
            return run.Show(() => AirShape.Of(view), JsonShapes.Spread.AirShape, () => Show(terminal, view));
        });
        return command;
    }

    private static Diagnostic NoBays(LoadedMachine machine) => new(
        "no-bays",
        new SourcePlace(machine.Path, 0, 0),
        $"The machine file of {machine.Design.Name} does not say what its bays are.",
        "Add a section `bays`; docs/machine-file.md has an example.");

    private static void Show(Terminal terminal, AirView view)
    {
        foreach (var bay in view.Bays)
        {
            terminal.Say();
            foreach (var sentence in AirWords.Summary(bay))
                terminal.Say(sentence);
            foreach (var sentence in bay.NotKnown)
                terminal.Say($"Not known: {sentence}", Meaning.Caution);
            ShowHeat(terminal, bay);
            ShowWays(terminal, bay);
            ShowParts(terminal, bay);
            foreach (var warmth in bay.Switches)
                terminal.Say(AirWords.Switch(warmth));
            MistakeTables.Show(terminal, $"Checks of the air in {bay.Name}:", bay.Mistakes);
        }
    }

    private static void ShowHeat(Terminal terminal, BayView bay)
    {
        terminal.Say();
        var sheet = new Sheet("Heat of", "At rest", "At work, at most", "How");
        foreach (var heat in bay.Heat)
            sheet.Add(AirWords.NameOf(heat), AirWords.Watts(heat.RestLeast, heat.RestMost), AirWords.Most(heat.WorkMost), string.Join("; ", heat.How));
        terminal.Show(sheet);
    }

    private static void ShowWays(Terminal terminal, BayView bay)
    {
        if (bay.Ways.Count == 0)
            return;
        terminal.Say();
        var sheet = new Sheet("Opening", "Fan", "Air, new filters");
        foreach (var way in bay.Ways)
            sheet.Add(way.Name, way.Fan, AirWords.Flow(way));
        terminal.Show(sheet);
    }

    private static void ShowParts(Terminal terminal, BayView bay)
    {
        if (bay.Parts.Count == 0)
            return;
        terminal.Say();
        var sheet = new Sheet("Part", "Air at it, at most", "Bears", "Verdict");
        foreach (var part in bay.Parts)
            sheet.Add(part.Part, AirWords.Hottest(part.HottestCelsius), AirWords.Bears(part), AirWords.Verdict(part));
        terminal.Show(sheet);
    }
}
