using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Puts pairs of mistakes that hide each other into words.</summary>
internal static class PairViews
{
    /// <summary>What the plan does against pairs, for people.</summary>
    public static PairsView Of(PlannedMachine planned)
    {
        var report = planned.Pairs;
        return new PairsView(
            report.Simulated,
            report.Caught,
            report.BothCaught.Masked + report.OneCaught.Masked,
            report.NoneCaught.Masked,
            [.. planned.AddedForPairs.Select(check => planned.Dictionary.Checks[check].Id)],
            Groups(planned));
    }

    private static IReadOnlyList<PairGroup> Groups(PlannedMachine planned) =>
    [
        .. planned.Pairs.Masked
            .Select(pair => (Pair: pair, Together: planned.Together.Of(pair.One, pair.Two)))
            .GroupBy(
                masked => (masked.Together.Severity, Alone: planned.Together.AloneWorst(masked.Pair.One, masked.Pair.Two), Reading: ReadingOf(masked.Pair), Kinds: KindsOf(planned, masked.Pair)))
            .OrderByDescending(group => group.Key.Severity)
            .ThenByDescending(group => group.Key.Alone)
            .ThenBy(group => group.First().Pair.Shows.IsSameCircuit)
            .ThenByDescending(group => group.Count())
            .Select(group => new PairGroup(
                group.Key.Kinds,
                group.Key.Reading,
                group.Key.Severity,
                group.First().Together.Sentence,
                group.Key.Alone,
                string.Join(" And: ", FaultsOf(planned, group.First().Pair).Select(fault => fault.Sentence)),
                [.. group.SelectMany(masked => FaultsOf(planned, masked.Pair)).Select(fault => fault.OtherEvidence).Distinct()],
                group.Count())),
    ];

    private static string ReadingOf(MaskedPair pair) => pair switch
    {
        { Shows.IsSameCircuit: true } => "Together they leave the same circuit: every reading is that of a sound machine.",
        { IsIndistinguishable: true } => "No check considered surely tells both together from a sound machine.",
        _ => "Checks outside the plan would catch both together; nothing is hurt or destroyed, so the plan does without them.",
    };

    private static string KindsOf(PlannedMachine planned, MaskedPair pair)
    {
        string[] kinds = [.. FaultsOf(planned, pair).Select(fault => WiringFaultRules.All.First(rule => rule.Kind == fault.Kind).Words).Distinct().Order(StringComparer.Ordinal)];
        return kinds.Length == 1 ? $"Two of one kind: {kinds[0]}" : $"Two kinds: {kinds[0]}; {kinds[1]}";
    }

    private static Fault[] FaultsOf(PlannedMachine planned, MaskedPair pair) => [planned.Dictionary.Faults[pair.One], planned.Dictionary.Faults[pair.Two]];
}
