using Proveout.Engine.Electrical;

namespace Proveout.Workshop;

/// <summary>Works out the order of energising and puts it into words.</summary>
public static class EnergisingViews
{
    /// <summary>The stages of a machine; takes a few seconds.</summary>
    public static EnergisingView Of(PlannedMachine planned, CancellationToken cancellation = default)
    {
        var stages = EnergisingOrder.Of(planned.Live, planned.Consequences, planned.Campaign.Faults, planned.Plan.Caught, cancellation);
        return new EnergisingView(planned.Machine.Summary, [.. stages.Select(stage => Of(planned, stage))]);
    }

    private static StageView Of(PlannedMachine planned, EnergisingStage stage) => new(
        stage.Number,
        stage.Title,
        stage.IsMains,
        stage.Cautions,
        stage.Instructions,
        stage.ExcludedBefore,
        [.. stage.Residuals.Select(risk => RiskOf(planned, risk))],
        stage.Precautions,
        [.. stage.Checks.Select(check => new StageCheck(check.Check, CheckWords.Expected(check.Check), check.Excludes.Count))]);

    private static StageRisk RiskOf(PlannedMachine planned, ResidualRisk risk)
    {
        var fault = planned.Dictionary.Faults[risk.Fault];
        return new StageRisk(fault.Id, fault.Sentence, risk.Severity, risk.Sentence, fault.OtherEvidence);
    }
}
