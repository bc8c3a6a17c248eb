using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Works out the order in which a machine is energised for the first time.</summary>
/// <remarks>
/// Stages: mains at the inlet with the main switch off; supplies unloaded; boards; every output with its load unplugged; then the groups of loads, each
/// time the one whose mistakes that nothing has excluded yet would do least harm, and heaters last, for they alone go on doing harm unseen. Before each stage every fault is looked at: what would do harm there is
/// excluded by the dead checks, by a live check of an earlier stage, or listed with a precaution.
/// </remarks>
public sealed class EnergisingOrder
{
    private readonly LiveModel _model;
    private readonly LiveConsequences _consequences;
    private readonly IReadOnlyList<WiringFault> _faults;
    private readonly HashSet<int> _excluded;
    private readonly List<EnergisingStage> _stages = [];
    private readonly StageChecks _checks;

    private EnergisingOrder(LiveModel model, LiveConsequences consequences, IReadOnlyList<WiringFault> faults, IEnumerable<int> excluded)
    {
        (_model, _consequences, _faults, _excluded) = (model, consequences, faults, [.. excluded]);
        _checks = new StageChecks(model, faults);
    }

    /// <summary>The stages in their order.</summary>
    /// <param name="model">The live machine.</param>
    /// <param name="consequences">What faults do to it.</param>
    /// <param name="faults">Every fault.</param>
    /// <param name="excluded">Indices of the faults that the dead checks surely catch.</param>
    /// <param name="cancellation">Stops it.</param>
    public static IReadOnlyList<EnergisingStage> Of(
        LiveModel model, LiveConsequences consequences, IReadOnlyList<WiringFault> faults, IEnumerable<int> excluded, CancellationToken cancellation = default)
    {
        var order = new EnergisingOrder(model, consequences, faults, excluded);
        var gates = Gates.Of(model);
        var states = new StageStates(model);
        if (states.Off is { } off)
            order.Add(new StagePlan("Mains at the inlet, main switch off", [], gates, [off]), cancellation);
        order.Add(new StagePlan("Switched on, supplies without load", [], gates, [states.Idle]), cancellation);
        var closed = gates.Where(gate => gate.Kind == GateKind.Board).ToList();
        if (closed.Count > 0)
            order.Add(new StagePlan("Supplies to the boards", [.. closed], [.. gates.Except(closed)], states.Quiet), cancellation);
        if (states.All is { } all)
            order.Add(new StagePlan("Every output on, its load still unplugged", [], [.. gates.Except(closed)], [all]), cancellation);
        var groups = gates.Except(closed).GroupBy(gate => gate.Kind).Select(group => group.ToArray()).ToList();
        while (groups.Count > 0)
        {
            var loads = groups.Where(group => group[0].Kind != GateKind.Heater).DefaultIfEmpty(groups[0]);
            var (next, plan, harms) = order.LeastRisk(loads.ToArray(), Plan, cancellation);
            groups.Remove(next);
            order.Add(plan, cancellation, harms);
            closed.AddRange(next);
        }

        return order._stages;

        StagePlan Plan(Gate[] group) => new(TitleOf(group[0].Kind), group, [.. gates.Except(closed).Except(group)], states.Loaded);
    }

    private static string TitleOf(GateKind kind) => kind switch
    {
        GateKind.Signal => "Sensors, switches and other signals plugged",
        GateKind.SmallLoad => "Fans, lamps and small loads plugged",
        GateKind.Motion => "Motors and magnets plugged",
        _ => "Heaters plugged",
    };

    // First the worst harm that is left, then how likely harm is at all, then the usual order.
    private (Gate[] Group, StagePlan Plan, LiveFinding?[] Harms) LeastRisk(Gate[][] groups, Func<Gate[], StagePlan> plan, CancellationToken cancellation)
    {
        int[] open = [.. Open];
        return groups
            .Select(group => (Group: group, Plan: plan(group)))
            .Select(item => (item.Group, item.Plan, Harms: StageHarms.Of(_consequences, item.Plan.Stage, open, _faults, cancellation)))
            .MinBy(item => RiskOf(item.Plan, open, item.Harms));
    }

    private (Severity Worst, double Likely, GateKind Kind) RiskOf(StagePlan plan, int[] open, LiveFinding?[] worst)
    {
        var harmful = worst.Index().Where(item => item.Item is { Severity: >= Severity.Damage }).ToArray();
        return (
            harmful.Select(item => item.Item!.Severity).DefaultIfEmpty(Severity.Hidden).Max(),
            harmful.Sum(item => _faults[open[item.Index]].Fault.Prior),
            plan.Closed[0].Kind);
    }

    private IEnumerable<int> Open => Enumerable.Range(0, _faults.Count).Where(fault => !_excluded.Contains(fault));

    // Of what is excluded already it only counts whether it would do harm.
    private void Add(StagePlan plan, CancellationToken cancellation, LiveFinding?[]? harms = null)
    {
        int[] open = [.. Open];
        harms ??= StageHarms.Of(_consequences, plan.Stage, open, _faults, cancellation);
        int[] excluded = [.. _excluded];
        var averted = StageHarms.Count(_consequences, plan.Stage, excluded, _faults, cancellation);
        var mains = _model.Mains is not null;
        ResidualRisk[] residuals =
        [
            .. from item in open.Zip(harms)
               let fault = item.First
               let finding = item.Second
               where finding is { Severity: >= Severity.Damage }
               orderby finding.Severity descending, _faults[fault].Fault.Prior descending
               select new ResidualRisk(fault, finding.Severity, finding.Sentence, Precautions.Against(finding, mains && IsOfMains(fault))),
        ];
        var checks = _checks.Of(_stages.Count + 1, plan, residuals, _excluded, cancellation);
        var amperes = _checks.MostAmperes(plan);
        _stages.Add(new EnergisingStage(
            _stages.Count + 1,
            plan.Title,
            mains,
            StageWords.Cautions(mains),
            StageWords.Instructions(plan, _stages.Count == 0),
            residuals.ToValueList(),
            residuals.Select(risk => risk.Precaution).Distinct().Order().Select(precaution => Precautions.Words(precaution, amperes)).ToValueList(),
            checks,
            averted));
        foreach (var check in checks)
            _excluded.UnionWith(check.Excludes);
    }

    private bool IsOfMains(int fault) => _faults[fault].Changes.Any(change => change.NodesIn(_model.Context.Wiring).Any(node =>
        _model.Context.ClassOf(node) is NetClass.Line or NetClass.Neutral or NetClass.ProtectiveEarth));
}
