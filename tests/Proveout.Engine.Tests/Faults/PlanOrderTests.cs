using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Faults;

namespace Proveout.Engine.Tests.Faults;

/// <summary>The order of checks against every order (exhaustive search is the oracle).</summary>
public sealed class PlanOrderTests
{
    private static readonly Config Many = Config.QuickThrowOnFailure.WithMaxTest(200).WithReplay(20261127, 9);

    private static readonly LeadPlacement LeadsOnX1AndX5 = new("s0", "kind-0", new CheckPoint("X", "1", ""), new CheckPoint("X", "5", ""));

    [Fact]
    public void What_an_order_takes_is_said_with_a_unit_at_every_figure() => Assert.StartsWith(
        "In this order about 7 min: set-ups 1.5 min, readings 4.0 min, 1 lead move 0.1 min, 2 meter changes 0.5 min. ",
        BenchOrderWords.Of(new BenchOrder([], new BenchTime(90, 240, 1, 4, 2, 30), 364)),
        StringComparison.Ordinal);

    [Fact]
    public void Up_to_six_checks_are_ordered_as_well_as_any_order_that_keeps_set_ups_and_severities() =>
        Prop.ForAll(OrderCase.OfAtMost(6), IsBest).Check(Many);

    [Fact]
    public void Eight_checks_of_one_class_are_ordered_as_well_as_any_of_their_orders()
    {
        var checks = Enumerable.Range(0, 8).Select(index => new OrderedCheck(index * 5 % 4, 4 + (index * 7 % 3), index < 6, index % 4 / 3, 0, Severity.Damage));
        Assert.True(IsBest(new OrderCase([.. checks])));
    }

    [Fact]
    public void From_where_the_leads_are_now_the_rest_is_ordered_as_well_as_any_order() =>
        Prop.ForAll(OrderCase.OfAtMost(5), problem =>
        {
            var dictionary = problem.Dictionary();
            var order = BenchOrder.Of(dictionary, Enumerable.Range(0, problem.Checks.Length), LeadsOnX1AndX5);
            return order.Time.Seconds == problem.LeastSecondsByExhaustion(dictionary, LeadsOnX1AndX5);
        }).Check(Many);

    [Fact]
    public void The_mended_way_and_the_bound_enclose_the_best_of_all_orders() =>
        Prop.ForAll(OrderCase.OfAtMost(7), problem =>
        {
            var one = new OrderCase([.. problem.Checks.Select(check => check with { SetUp = 0, Severity = Severity.Damage })]);
            var dictionary = one.Dictionary();
            var stops = new LeadStops(dictionary.Checks, BenchCosts.ByHand);
            LeadWalk[] from = [new(stops.Number(LeadPlacement.Empty), 0, -1, null)];
            int[] checks = [.. Enumerable.Range(0, one.Checks.Length)];
            var best = ExactWalk.Through(stops, from, checks).Min(walk => walk.Units);
            var mended = LongWalk.Through(stops, from[0], checks);
            var bound = WalkBound.Of(stops, from, checks);
            return bound <= best && best <= mended.Units && mended.Stops().Select(stop => stop / 2).Order().SequenceEqual(checks);
        }).Check(Many);

    [Fact]
    public void A_hundred_checks_from_one_hub_leave_the_lead_on_the_hub()
    {
        var checks = Enumerable.Range(0, 100).Select(index => new OrderedCheck(index % 2 == 0 ? 0 : 10 + index, index % 2 == 0 ? 10 + index : 0, false, 0, 0, Severity.Damage));
        var dictionary = new OrderCase([.. checks]).Dictionary();
        var order = BenchOrder.Of(dictionary, Enumerable.Range(0, 100));
        Assert.Equal(101, order.Time.LeadMoves);
        Assert.Equal(0, order.Gap);
    }

    [Fact]
    public void A_check_that_minds_polarity_keeps_its_leads_as_they_are_written() =>
        Prop.ForAll(OrderCase.OfAtMost(30), problem =>
            BenchOrder.Of(problem.Dictionary(), Enumerable.Range(0, problem.Checks.Length)).Steps.All(step => !step.Swapped || !problem.Checks[step.Check].Minds)).Check(Many);

    [Fact]
    public void Checks_that_would_catch_shock_come_first_what_strains_last_and_set_ups_keep_their_order() =>
        Prop.ForAll(OrderCase.OfAtMost(30), problem =>
        {
            var steps = BenchOrder.Of(problem.Dictionary(), Enumerable.Range(0, problem.Checks.Length)).Steps;
            var ranks = steps.Select(step => (problem.Checks[step.Check].SetUp, problem.Checks[step.Check].Last, -(int)problem.Checks[step.Check].Severity)).ToArray();
            return ranks.Order().SequenceEqual(ranks) && steps.Select(step => step.Check).Order().SequenceEqual(Enumerable.Range(0, problem.Checks.Length));
        }).Check(Many);

    [Fact]
    public void What_is_left_of_a_plan_goes_on_from_where_the_leads_are()
    {
        var problem = new OrderCase([new(0, 4, true, 0, 0, Severity.Damage), new(1, 5, true, 0, 0, Severity.Damage), new(1, 6, true, 0, 0, Severity.Damage)]);
        var dictionary = problem.Dictionary();
        var plan = CheckPlan.Of(dictionary);
        var rest = BenchOrder.Next(dictionary, plan, new HashSet<string> { "c2" }, LeadPlacement.Empty.After(dictionary.Checks[2]));
        Assert.Equal([1, 0], rest.Steps.Select(step => step.Check));
        Assert.Equal((false, true, false, false), (rest.Steps[0].MovesRed, rest.Steps[0].MovesBlack, rest.Steps[0].ChangesMeter, rest.Steps[0].ChangesSetUp));
    }

    [Fact]
    public void Words_of_a_step_say_which_lead_stays_and_when_the_other_way_round_is_better()
    {
        var check = new OrderedCheck(0, 4, false, 0, 0, Severity.Damage).Check(0);
        Assert.Equal("", OrderStep.From(LeadPlacement.Empty, 0, check).LeadWords(check));
        Assert.StartsWith("Better the red lead on X.4 and the black one on X.0", OrderStep.From(LeadPlacement.Empty, 0, check, swapped: true).LeadWords(check), StringComparison.Ordinal);
        var next = new OrderedCheck(4, 5, false, 0, 0, Severity.Damage).Check(1);
        Assert.StartsWith("The lead on X.4 stays", OrderStep.From(LeadPlacement.Empty.After(check), 1, next).LeadWords(next), StringComparison.Ordinal);
    }

    [Fact]
    public void The_time_of_a_plan_is_the_sum_of_its_parts()
    {
        var problem = new OrderCase([new(0, 4, true, 0, 0, Severity.Damage), new(0, 5, true, 1, 0, Severity.Damage), new(0, 5, true, 1, 1, Severity.Damage)]);
        var time = CheckPlan.Of(problem.Dictionary()).Order.Time;
        Assert.Equal(new BenchTime(50, 12, 5, 20, 2, 30), time);
        Assert.Equal(112, time.Seconds);
    }

    private static bool IsBest(OrderCase problem)
    {
        var dictionary = problem.Dictionary();
        var order = BenchOrder.Of(dictionary, Enumerable.Range(0, problem.Checks.Length));
        return order.Time.Seconds == problem.LeastSecondsByExhaustion(dictionary, LeadPlacement.Empty) && order.Gap == 0;
    }
}
