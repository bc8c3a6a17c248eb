using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>The order in which a machine is energised for the first time.</summary>
internal sealed record EnergisingShape(string Format, string Machine, string Premise, IReadOnlyList<StageShape> Stages)
{
    public static EnergisingShape Of(EnergisingView view) =>
        new("proveout-energising 1", view.Machine.Name, EnergisingView.Premise, [.. view.Stages.Select(StageShape.Of)]);
}

/// <summary>One stage.</summary>
internal sealed record StageShape(
    int Number,
    string Title,
    bool MainsOn,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Precautions,
    IReadOnlyList<string> Instructions,
    int ExcludedBefore,
    IReadOnlyList<RiskShape> Risks,
    IReadOnlyList<StageCheckShape> Checks)
{
    public static StageShape Of(StageView stage) => new(
        stage.Number,
        stage.Title,
        stage.IsMains,
        stage.Cautions,
        stage.Precautions,
        stage.Instructions,
        stage.ExcludedBefore,
        [.. stage.Risks.Select(risk => new RiskShape(risk.FaultId, risk.Sentence, SeverityWords.Of(risk.Severity), risk.Consequence, risk.OtherEvidence))],
        [.. stage.Checks.Select(check => new StageCheckShape(
            check.Check.Id, check.Check.Kind, check.Check.Instruction, check.Check.Unit, LowHighShape.Of(check.Check.Expectation), check.Expected, check.Tells))]);
}

/// <summary>A mistake that nothing before has surely excluded.</summary>
internal sealed record RiskShape(string Id, string Sentence, string Severity, string Consequence, string OtherEvidence);

/// <summary>What to measure before the next stage.</summary>
internal sealed record StageCheckShape(string Id, string Kind, string Instruction, string Unit, LowHighShape Expected, string ExpectedWords, int Excludes);

/// <summary>An interval that may lie below zero, as volts do.</summary>
internal sealed record LowHighShape(double Low, double High)
{
    public static LowHighShape Of(Engine.Faults.ReadingInterval interval) => new(interval.Low, interval.High);
}
