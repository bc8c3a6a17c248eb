using Proveout.Engine.Faults;

namespace Proveout.Workshop.Tests;

public sealed class BenchRouteTests
{
    private static readonly PlannedMachine Machine = Samples.Pennywort;
    private static readonly IReadOnlyList<int> Plan = Machine.Plan.Checks;

    [Fact]
    public void Read_in_the_order_of_the_plan_the_plan_goes_on()
    {
        var done = Plan.Take(9).ToArray();
        Assert.Equal(Ids(Plan), BenchRoute.Of(Machine, Plan, done, done).Order);
    }

    [Fact]
    public void After_a_check_elsewhere_the_rest_goes_on_from_where_the_leads_are()
    {
        int[] done = [.. Plan.Take(3), Plan[40]];
        var route = BenchRoute.Of(Machine, Plan, done, done);
        var rest = BenchOrder.Next(Machine.Dictionary, Machine.Plan, Ids(done).ToHashSet(), route.Now);

        Assert.Equal(Machine.Dictionary.Checks[Plan[40]].SetUp, route.Now.SetUp);
        Assert.Equal([.. Ids(done), .. Ids(rest.Steps.Select(step => step.Check))], route.Order);
    }

    [Fact]
    public void A_check_left_out_moves_no_lead()
    {
        int[] read = [.. Plan.Take(3)];
        var route = BenchRoute.Of(Machine, Plan, [.. read, Plan[3]], read);

        Assert.Equal(BenchRoute.Of(Machine, Plan, read, read).Now, route.Now);
        Assert.Equal(Ids(Plan).Order(StringComparer.Ordinal), route.Order.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_check_out_of_turn_says_what_changes_from_where_the_leads_are_now()
    {
        int[] done = [Plan[0]];
        var step = BenchRoute.Of(Machine, Plan, done, done).StepTo(Plan[^1]);

        Assert.Equal(OrderStep.From(LeadPlacement.Empty.After(Machine.Dictionary.Checks[Plan[0]], Machine.Plan.Order.Steps[0].Swapped), Plan[^1], Machine.Dictionary.Checks[Plan[^1]]), step);
    }

    [Fact]
    public async Task The_bench_says_which_lead_stays_wherever_one_does()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var build = await fixture.StartAsync();
        var state = (await fixture.Bench.StateAsync(build.Id, default))!;
        foreach (var planned in Machine.Plan.Order.Steps.Take(12))
        {
            var step = state.FindStep(state.CurrentCheckId!)!;
            Assert.Equal((planned.LeadWords(step.Check), planned.ChangesMeter), (step.Leads, step.ChangesMeter));
            state = (await fixture.Bench.EnterReadingAsync(build.Id, new ReadingRequest(step.Check.Id, "OL", "Ada", Guid.CreateVersion7()), default)).Value!;
        }
    }

    private static IEnumerable<string> Ids(IEnumerable<int> checks) => checks.Select(check => Machine.Dictionary.Checks[check].Id);
}
