using System.CommandLine;
using System.Globalization;
using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout belts MACHINE</c>: paths, lengths to cut, what moves what, and how a belt that runs another way is found.</summary>
internal static class BeltsCommand
{
    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "belts",
            "Prove the paths of a machine's belts: lengths over the travel and to cut, which motor moves which axis, and the fewest hand checks that surely find a belt, pulley or plug that is not as drawn.",
            "proveout belts samples/alderbrook",
            "proveout belts samples/alderbrook --sees \"x goes aslant\" --sees \"x binds on its way by hand\"")
        {
            options.Machine, options.Json,
        };
        var seeing = new SeenOptions();
        seeing.AddTo(command);
        var keeping = new KeepOptions(options);
        keeping.AddTo(command);
        MachineRun.Of(command, terminal, options, async run =>
        {
            var view = await run.WaitAsync($"Proving the belts of {run.Machine.Design.Name} and every mistake with them", () => BeltProof.Of(run.Machine.Summary, run.Machine.Design));
            if (view is null)
                return terminal.Refuse([NoBelts(run.Machine)], run.AsJson);
            var answers = BeltProof.Answers(view, seeing.Sees(run.Parse), seeing.Reads(run.Parse));
            if (answers.Value is not { } said)
                return terminal.Refuse(answers.Diagnostics, run.AsJson);
            var seen = said.Count > 0 ? BeltProof.Explain(view, said) : null;
            var kept = await keeping.KeepAsync(run.Parse, keep => Measurements.Of(view, seen, keep), new Dictionary<string, string>(), [], run.Cancellation);
            return kept.Problems.Count > 0
                ? terminal.Refuse(kept.Problems, run.AsJson)
                : run.Show(
                    () => BeltsShape.Of(view, seen, kept.Entry), JsonShapes.Spread.BeltsShape, () => Show(terminal, view, seen, kept), view.Findings.Count > 0 || seen?.Suspects.Count > 0 ? ExitCode.Findings : ExitCode.Fine);
        });
        return command;
    }

    private static Diagnostic NoBelts(LoadedMachine machine) => new(
        "nothing-moves",
        new SourcePlace(machine.Path, 0, 0),
        $"The machine file of {machine.Design.Name} does not say what moves its axes.",
        "Add the sections `axes`, `pulleys` and `belts`, or `screws`; docs/machine-file.md has an example.");

    private static void Show(Terminal terminal, BeltsView view, SeenView? seen, Kept kept)
    {
        if (seen is null)
            ShowProof(terminal, view);
        else
            SeenText.Show(terminal, seen);
        kept.Say(terminal);
    }

    private static void ShowProof(Terminal terminal, BeltsView view)
    {
        foreach (var finding in view.Findings)
        {
            terminal.Say(finding.Sentence, Meaning.Bad);
            terminal.Say($"  {finding.Mend} ({finding.Rule}; {finding.Source})");
        }

        if (view.Findings.Count == 0)
            terminal.Say("No rule finds anything in the paths. What no rule looks for is not found.");
        ShowBelts(terminal, view);
        ShowMotors(terminal, view);
        ShowChecks(terminal, view);
        ShowHandChecks(terminal);
        SeenText.List(terminal, view.Questions);
    }

    private static void ShowBelts(Terminal terminal, BeltsView view)
    {
        terminal.Say();
        var sheet = new Sheet("Belt", "Path", "Stays the same", "Cut", "Trim each end when settled", "Bends");
        foreach (var belt in view.Belts)
            sheet.Add(BeltWords.Of(belt));
        terminal.Show(sheet);
    }

    private static void ShowMotors(Terminal terminal, BeltsView view)
    {
        terminal.Say();
        var sheet = new Sheet("Motor", "Axis", "Turns for 1 mm", "mm for a turn", "mm for a full step");
        foreach (var motor in view.Motors)
            foreach (var share in motor.Axes)
                sheet.Add(BeltWords.Of(motor, share));
        terminal.Show(sheet);
    }

    private static void ShowChecks(Terminal terminal, BeltsView view)
    {
        terminal.Say();
        terminal.Say("Checks that find a belt, pulley or plug that is not as drawn:");
        foreach (var setUp in view.Table.SetUps)
        {
            terminal.Warn(setUp.Cautions);
            terminal.Say($"{setUp.Title}. {string.Join(" ", setUp.Instructions)}");
            foreach (var check in view.Table.Checks.Where(check => check.Check.SetUp == setUp.Id))
                terminal.Say($"  {check.Check.Title}: {check.Expected}. {check.Check.Instruction}");
        }

        var caught = view.Table.Mistakes.Count(row => row.CaughtBy.Count > 0);
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture,
            $"{caught} of {view.Table.Mistakes.Count} mistakes are surely found by {view.Table.Checks.Count} checks; {view.Alike.Sum(group => group.Count)} of them look like another. What was not thought of is not found."));
    }

    private static void ShowHandChecks(Terminal terminal)
    {
        terminal.Say();
        terminal.Say("Pulleys and idlers by hand:");
        terminal.Warn(BeltHandChecks.All.Select(check => check.Caution).Distinct());
        foreach (var check in BeltHandChecks.All)
            terminal.Say($"{check.Title}: {check.Instruction} Good: {check.Good} Not good: {check.Bad} ({check.Source})");
        foreach (var (screw, torque, remark) in BeltHandChecks.Torques)
            terminal.Say(string.Create(CultureInfo.InvariantCulture, $"{screw}: {torque:0.0} N·m, {remark}"));
    }
}
