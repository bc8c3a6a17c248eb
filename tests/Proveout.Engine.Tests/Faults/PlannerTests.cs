using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

public sealed class PlannerTests
{
    // A fault that three of six checks miss misleads the greedy rule: it starts with check 1, which no plan of two needs (found by exhaustion).
    private static readonly int[][] MisleadsGreedy = [[1, 2], [0, 2, 4, 5], [0, 3, 5], [0, 3, 4], [0, 1, 5], [2, 3, 4, 5]];

    [Fact]
    public void The_exact_plan_needs_two_checks_where_the_greedy_rule_takes_three()
    {
        var dictionary = SmallDictionary.Of(6, MisleadsGreedy);
        Assert.Equal(3, Planner.Choose(dictionary, onlyGreedy: true).Checks.Count);
        var exact = Planner.Choose(dictionary);
        Assert.Equal([4, 5], exact.Checks);
        Assert.Equal(0, exact.Gap);
    }

    // The tight family for the greedy rule (Johnson 1974; Chvátal, Mathematics of Operations Research 4 (1979) 233-235): disjoint sets of
    // 2, 4, 8 elements, and two further sets that each hold one half of every one of them. Two checks are enough.
    [Fact]
    public void The_tight_family_of_the_literature_is_covered_by_its_two_halves()
    {
        int[][] family = [[0, 1], [2, 3, 4, 5], [6, 7, 8, 9, 10, 11, 12, 13], [0, 2, 3, 6, 7, 8, 9], [1, 4, 5, 10, 11, 12, 13]];
        Assert.Equal([3, 4], Planner.Choose(SmallDictionary.Of(14, family)).Checks);
    }

    [Fact]
    public void A_dear_check_is_left_out_when_two_cheap_ones_do()
    {
        var dictionary = SmallDictionary.Of(2, [[0, 1], [0], [1]], [100, 10, 10]);
        Assert.Equal([1, 2], Planner.Choose(dictionary).Checks);
    }

    [Fact]
    public void A_fault_that_no_check_catches_is_listed_and_asks_for_nothing()
    {
        var plan = CheckPlan.Of(SmallDictionary.Of(3, [[0], [2]]));
        Assert.Equal([1], plan.Uncaught);
        Assert.Equal([0, 2], plan.Caught);
    }

    [Fact]
    public void Every_plan_catches_whatever_can_be_caught_and_costs_no_more_than_the_best_of_all_subsets()
    {
        var dictionaries =
            from catches in Gen.Choose(0, 255).ListOf(6)
            select SmallDictionary.Of(8, [.. catches.Select(mask => Enumerable.Range(0, 8).Where(bit => (mask >> bit & 1) == 1).ToArray())]);
        Prop.ForAll(dictionaries.ToArbitrary(), IsBestOfAllSubsets).QuickCheckThrowOnFailure();
    }

    private static bool IsBestOfAllSubsets(FaultDictionary dictionary)
    {
        var catchable = Enumerable.Range(0, dictionary.Faults.Count).Where(fault => dictionary.ChecksThatCatch(fault).Any()).ToArray();
        var plan = Planner.Choose(dictionary);
        var best = Enumerable.Range(0, 1 << dictionary.Checks.Count)
            .Select(mask => Enumerable.Range(0, dictionary.Checks.Count).Where(bit => (mask >> bit & 1) == 1).ToArray())
            .Where(subset => Covers(dictionary, catchable, subset))
            .Min(subset => subset.Length);
        return Covers(dictionary, catchable, plan.Checks) && plan.Checks.Count == best;
    }

    private static bool Covers(FaultDictionary dictionary, int[] faults, IReadOnlyList<int> checks) =>
        Array.TrueForAll(faults, fault => checks.Any(check => dictionary.IsSurelyCaught(fault, check)));
}
