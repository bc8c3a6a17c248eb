using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>The choice of checks against every subset (exhaustive search is the oracle).</summary>
public sealed class PlanProofTests
{
    private const int Cases = 400;

    private static readonly Config Many = Config.QuickThrowOnFailure.WithMaxTest(Cases).WithReplay(20261127, 7);

    [Fact]
    public void The_proved_plan_costs_what_the_best_of_all_subsets_costs_set_ups_and_further_demands_included() =>
        Prop.ForAll(PlanCase.Any, problem =>
        {
            var choice = Planner.Choose(problem.Dictionary(), alsoCatch: problem.AlsoCatch);
            return problem.IsMetBy(choice.Checks, _ => true)
                && choice.CostSeconds == problem.Seconds(choice.Checks)
                && choice.CostSeconds == problem.LeastSecondsByExhaustion(_ => true)
                && choice.LowerBoundSeconds == choice.CostSeconds;
        }).Check(Many);

    [Fact]
    public void Checks_that_may_not_be_used_are_left_out_and_the_rest_is_still_the_best() =>
        Prop.ForAll(PlanCase.Any, problem =>
        {
            var free = problem with { AlsoCatchMasks = [] };
            var choice = Planner.Choose(free.Dictionary(), mayUse: MayUse);
            return free.IsMetBy(choice.Checks, MayUse) && choice.CostSeconds == free.LeastSecondsByExhaustion(MayUse);

            static bool MayUse(int check) => check % 3 != 1;
        }).Check(Many);

    [Fact]
    public void No_bound_of_a_greedy_plan_lies_above_the_best_of_all_subsets() =>
        Prop.ForAll(PlanCase.Any, problem =>
        {
            var choice = Planner.Choose(problem.Dictionary(), onlyGreedy: true, problem.AlsoCatch);
            var best = problem.LeastSecondsByExhaustion(_ => true);
            return problem.IsMetBy(choice.Checks, _ => true) && choice.LowerBoundSeconds <= best && best <= choice.CostSeconds;
        }).Check(Many);

    [Fact]
    public void Splitting_into_parts_and_deciding_set_ups_one_by_one_loses_nothing() =>
        Prop.ForAll(PlanCase.Any, problem =>
        {
            var cover = CoverProblem.Of(problem.Dictionary(), problem.AlsoCatch, _ => true);
            var whole = new CoverSearch(cover, onlyGreedy: false, split: false).Solve();
            var split = new CoverSearch(cover, onlyGreedy: false).Solve();
            return whole.Units == split.Units && whole.LowerUnits == split.LowerUnits;
        }).Check(Many);

    [Fact]
    public void Reduction_keeps_a_cheapest_solution() =>
        Prop.ForAll(PlanCase.Any, problem =>
        {
            var cover = CoverProblem.Of(problem.Dictionary(), problem.AlsoCatch, _ => true);
            var reduced = CoverReduction.Of(cover, cover.Rows, new bool[cover.SetUpUnits.Length]);
            return Least(cover, cover.Rows, []) == Least(cover, reduced.Rows, reduced.Taken);
        }).Check(Many);

    [Fact]
    public void The_same_dictionary_always_gets_the_same_plan() =>
        Prop.ForAll(PlanCase.Any, problem =>
            Planner.Choose(problem.Dictionary(), alsoCatch: problem.AlsoCatch).Checks.SequenceEqual(
                Planner.Choose(problem.Dictionary(), alsoCatch: problem.AlsoCatch).Checks)).Check(Many.WithMaxTest(60));

    [Fact]
    public void A_demand_that_no_allowed_check_meets_is_refused() =>
        Assert.Throws<ArgumentException>(() => Planner.Choose(SmallDictionary.Of(1, [0], [0]), alsoCatch: [[1]], mayUse: check => check == 0));

    // Two set-ups of 100 s, each fault caught in either: only one is worth its price, although the checks of the other are cheaper.
    [Fact]
    public void A_set_up_that_couples_all_parts_is_decided_once_for_all()
    {
        var faults = Enumerable.Range(0, 6).ToArray();
        var problem = new PlanCase(
            6,
            [.. faults.Select(fault => 1 << fault), .. faults.Select(fault => 1 << fault)],
            [0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1],
            [2, 2, 2, 2, 2, 2, 1, 1, 1, 1, 1, 30],
            [100, 100, 0, 0],
            []);
        var choice = Planner.Choose(problem.Dictionary());
        Assert.Equal([0, 1, 2, 3, 4, 5], choice.Checks);
        Assert.Equal(112, choice.CostSeconds);
        Assert.Equal(0, choice.Gap);
    }

    [Fact]
    public void The_proof_says_how_many_checks_are_left_to_the_search()
    {
        var proof = Planner.Choose(SmallDictionary.Of(3, [0], [0], [1, 2], [2])).Proof;
        Assert.StartsWith("Proved:", proof, StringComparison.Ordinal);
        Assert.Contains("4 checks catch something, 3 of them differ; 2 follow without a search.", proof, StringComparison.Ordinal);
    }

    private static long Least(CoverProblem cover, int[][] rows, IReadOnlyList<int> taken) =>
        Enumerable.Range(0, 1 << cover.Columns.Length)
            .Select(subset => Enumerable.Range(0, cover.Columns.Length).Where(column => (subset >> column & 1) == 1).Union(taken).ToHashSet())
            .Where(columns => Array.TrueForAll(rows, row => row.Any(columns.Contains)))
            .Min(columns => cover.Units(columns));
}
