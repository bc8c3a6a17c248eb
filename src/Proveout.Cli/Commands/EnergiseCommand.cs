using System.CommandLine;
using System.Globalization;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary><c>proveout energise MACHINE</c>.</summary>
internal static class EnergiseCommand
{
    private const int MostRisks = 5;

    public static Command Build(Terminal terminal, SharedOptions options)
    {
        var command = new ExampleCommand(
            "energise",
            "Show the order in which a machine is energised for the first time: stage by stage, what could still do harm, and what to measure before the next.",
            "proveout energise samples/pennywort")
        {
            options.Machine, options.Json,
        };
        MachineRun.Of(command, terminal, options, async run =>
        {
            var planned = await run.PlanAsync();
            var view = await run.WaitAsync(
                $"Energising {run.Machine.Design.Name} stage by stage, sound and with every mistake", () => EnergisingViews.Of(planned, run.Cancellation));
            return run.Show(() => EnergisingShape.Of(view), JsonShapes.Spread.EnergisingShape, () => Show(terminal, view));
        });
        return command;
    }

    private static void Show(Terminal terminal, EnergisingView view)
    {
        terminal.Say(EnergisingView.Premise, Meaning.Caution);
        IReadOnlyList<string> before = [];
        foreach (var stage in view.Stages)
        {
            Show(terminal, stage, hasNewCautions: !stage.Cautions.SequenceEqual(before));
            before = stage.Cautions;
        }
    }

    private static void Show(Terminal terminal, StageView stage, bool hasNewCautions)
    {
        terminal.Say();
        terminal.Say(string.Create(CultureInfo.InvariantCulture, $"Stage {stage.Number}: {stage.Title}{(stage.IsMains ? " (mains on)" : "")}"));
        terminal.Warn(hasNewCautions ? stage.Cautions : []);
        foreach (var precaution in stage.Precautions)
            terminal.Say($"PRECAUTION: {precaution}", Meaning.Caution);
        terminal.Say(string.Create(
            CultureInfo.InvariantCulture, $"{stage.ExcludedBefore} mistakes that would do harm here are excluded by earlier checks; {stage.Risks.Count} are not."));
        foreach (var risk in stage.Risks.Take(MostRisks))
            terminal.Say($"- {SeverityWords.Of(risk.Severity)}: {risk.Sentence} {risk.Consequence} Beforehand: {risk.OtherEvidence}");
        if (stage.Risks.Count > MostRisks)
            terminal.Say(string.Create(CultureInfo.InvariantCulture, $"- and {stage.Risks.Count - MostRisks} more; --json lists all."));
        foreach (var instruction in stage.Instructions)
            terminal.Say(instruction);
        var sheet = new Sheet("Before the next stage", "Should read", "Excludes");
        foreach (var check in stage.Checks)
            sheet.Add(check.Check.Instruction, check.Expected, check.Tells.ToString(CultureInfo.InvariantCulture));
        terminal.Show(sheet);
    }
}
