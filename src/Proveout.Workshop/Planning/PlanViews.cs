using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Puts a plan and its coverage into words.</summary>
public static class PlanViews
{
    private const int MostExamples = 5;

    /// <summary>The plan for people.</summary>
    public static PlanView Of(PlannedMachine planned)
    {
        var plan = planned.Plan;
        return new PlanView(
            planned.Machine.Summary,
            Groups(planned),
            Coverage(planned, plan.Checks),
            Uncovered(planned),
            planned.Dictionary.Checks.Count,
            planned.Dictionary.Faults.Count,
            plan.Caught.Count,
            Enumerable.Range(0, planned.Dictionary.Faults.Count).Count(fault => planned.Dictionary.ChecksThatCatch(fault).Any()),
            plan.Order.Time.Seconds / 60,
            plan.Choice.Proof)
        {
            Order = plan.Order.Words,
            Ambiguous = Ambiguous(planned),
            Pairs = PairViews.Of(planned),
        };
    }

    /// <summary>Faults by kind, and how many of them some checks surely catch.</summary>
    /// <param name="planned">The machine.</param>
    /// <param name="checks">Indices of the checks.</param>
    public static IReadOnlyList<KindCoverage> Coverage(PlannedMachine planned, IEnumerable<int> checks)
    {
        var done = checks.ToHashSet();
        return
        [
            .. WiringFaultRules.All
                .Select(rule => (rule.Words, Faults: FaultsOf(planned, rule.Kind)))
                .Where(kind => kind.Faults.Length > 0)
                .Select(kind => new KindCoverage(
                    kind.Words, kind.Faults.Length, kind.Faults.Count(fault => planned.Dictionary.ChecksThatCatch(fault).Any(done.Contains)))),
        ];
    }

    /// <summary>What a check would catch, in a few words.</summary>
    public static string CatchesOf(PlannedMachine planned, int check)
    {
        var caught = Enumerable.Range(0, planned.Dictionary.Faults.Count).Where(fault => planned.Dictionary.IsSurelyCaught(fault, check)).ToArray();
        var worst = caught.Length == 0 ? Severity.Hidden : caught.Max(fault => planned.Dictionary.Faults[fault].Severity);
        return caught.Length == 1
            ? $"Catches 1 mistake: {SeverityWords.Of(worst)}."
            : FormattableString.Invariant($"Catches {caught.Length} mistakes, at worst: {SeverityWords.Of(worst)}.");
    }

    private static IReadOnlyList<PlanGroup> Groups(PlannedMachine planned)
    {
        var number = 0;
        var counts = CatchCounts(planned);
        var added = planned.AddedForPairs.ToHashSet();
        var leads = planned.Plan.Order.Steps.ToDictionary(step => step.Check, step => step.LeadWords(planned.Dictionary.Checks[step.Check]));
        return
        [
            .. planned.Plan.Checks
                .GroupBy(check => planned.Dictionary.Checks[check].SetUp)
                .Select(group => new PlanGroup(
                    planned.Dictionary.SetUps.First(setUp => setUp.Id == group.Key),
                    [
                        .. group.Select(check => new PlannedCheck(
                            ++number,
                            planned.Explained(check),
                            CheckWords.Expected(planned.Dictionary.Checks[check]),
                            counts[check])
                        {
                            Leads = leads[check],
                            IsForPairs = added.Contains(check),
                        }),
                    ])),
        ];
    }

    private static IReadOnlyList<AmbiguousFaults> Ambiguous(PlannedMachine planned) =>
    [
        .. AmbiguityGroup.Of(planned.Dictionary, planned.Plan.Caught)
            .Where(group => group.Faults.Count > 1)
            .OrderByDescending(group => group.Faults.Count)
            .Select(group => new AmbiguousFaults([.. group.Faults.Select(fault => planned.Dictionary.Faults[fault].Sentence)])),
    ];

    private static int[] CatchCounts(PlannedMachine planned)
    {
        var counts = new int[planned.Dictionary.Checks.Count];
        for (var fault = 0; fault < planned.Dictionary.Faults.Count; fault++)
            foreach (var check in planned.Dictionary.ChecksThatCatch(fault))
                counts[check]++;
        return counts;
    }

    private static int[] FaultsOf(PlannedMachine planned, string kind) =>
        [.. planned.Dictionary.Faults.Index().Where(item => item.Item.Kind == kind).Select(item => item.Index)];

    private static IReadOnlyList<UncoveredGroup> Uncovered(PlannedMachine planned) =>
    [
        .. planned.Plan.Uncaught
            .Select(fault => planned.Dictionary.Faults[fault])
            .GroupBy(fault => (fault.Kind, fault.Severity, fault.OtherEvidence))
            .OrderByDescending(group => group.Key.Severity)
            .ThenByDescending(group => group.Count())
            .Select(group => new UncoveredGroup(
                SentenceOf(group.Key.Kind, group.Count(), group.Key.Severity),
                group.Key.OtherEvidence,
                group.Key.Severity,
                [.. group.Select(fault => fault.Sentence).Take(MostExamples)],
                group.Count())),
    ];

    private static string SentenceOf(string kind, int count, Severity severity)
    {
        var words = WiringFaultRules.All.First(rule => rule.Kind == kind).Words;
        return severity == Severity.Hidden
            ? FormattableString.Invariant($"No meter can tell, for the circuit stays as it is: {words} ({count}).")
            : FormattableString.Invariant($"No dead reading surely tells: {words} ({count}).");
    }
}
