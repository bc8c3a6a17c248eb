using Proveout.Engine.Faults;

namespace Proveout.Workshop.Tests.Priors;

public sealed class LearnedPriorsTests
{
    [Fact]
    public void Nothing_recorded_leaves_the_assumed_rates()
    {
        var learned = LearnedPriors.Of([Build(found: 0, expected: 3)]);
        Assert.Equal(1, learned.FactorOf("ends-swapped"));
    }

    [Fact]
    public void Found_and_expected_move_the_rate_as_a_Gamma_prior_worth_one_mistake_does()
    {
        // Gamma(1, 1) and 5 found where 2 were expected: Gamma(6, 3), mean 2 (Gelman et al., Bayesian Data Analysis, section 2.6).
        var learned = LearnedPriors.Of([Build(3, 0.5), Build(2, 1.5)]);
        Assert.Equal(2, learned.FactorOf("ends-swapped"), 12);
    }

    [Fact]
    public void A_kind_looked_for_and_not_found_becomes_rarer_once_mistakes_are_recorded()
    {
        var learned = LearnedPriors.Of([Build(1, 0.1), new(new Dictionary<string, int>(), new Dictionary<string, double> { ["bridge"] = 1 })]);
        Assert.Equal(0.5, learned.FactorOf("bridge"), 12);
        Assert.Equal(1, learned.FactorOf("never-heard-of"));
    }

    [Fact]
    public void Many_builds_make_the_rate_what_was_seen_whatever_was_assumed()
    {
        // 1000 builds with 20 places each, assumed 0.002, made at 0.01: 200 found where 40 were expected.
        var learned = LearnedPriors.Of([.. Enumerable.Range(0, 1000).Select(build => Build(build % 5 == 0 ? 1 : 0, 20 * 0.002))]);
        Assert.InRange(learned.RateOf(Fault(0.002)), 0.0095, 0.0105);
    }

    [Fact]
    public void No_rate_is_learned_beyond_a_half() => Assert.Equal(0.5, LearnedPriors.Of([Build(1000, 0.1)]).RateOf(Fault(0.3)));

    [Fact]
    public async Task A_mistake_found_in_one_build_makes_its_kind_likelier_in_the_next()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var (first, second, third) = (await fixture.StartAsync("1"), await fixture.StartAsync("2"), await fixture.StartAsync("3"));
        var check = Samples.Pennywort.Plan.Checks.Select(index => Samples.Pennywort.Dictionary.Checks[index]).First(check => check.Expectation.High < 2).Id;
        var before = (await fixture.Bench.EnterReadingAsync(second.Id, new(check, "OL", "Ada", Guid.NewGuid()), default)).Value!.Suspects;
        var rare = Samples.Pennywort.Dictionary.Faults.First(fault => fault.Id == before[^1].FaultIds[0]);

        var noted = await fixture.Bench.NoteMistakeAsync(first.Id, new(rare.Id, "Mended.", "Ada", Guid.NewGuid()), default);
        var after = (await fixture.Bench.EnterReadingAsync(third.Id, new(check, "OL", "Ada", Guid.NewGuid()), default)).Value!.Suspects;

        Assert.Empty(noted.Diagnostics);
        Assert.True(ShareOf(rare.Id, after) > ShareOf(rare.Id, before));
    }

    [Fact]
    public async Task A_mistake_found_through_another_server_counts_here_after_five_seconds_also_where_nothing_was_entered()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var clock = new SteppedClock();
        var here = new Bench(fixture.Shelf, Samples.Desk, fixture.Journal, new WorkshopRecords(fixture.Journal), clock);
        var (first, second) = (await fixture.StartAsync("1"), await fixture.StartAsync("2"));
        var check = Samples.Pennywort.Plan.Checks.Select(index => Samples.Pennywort.Dictionary.Checks[index]).First(check => check.Expectation.High < 2).Id;
        var before = (await here.EnterReadingAsync(second.Id, new(check, "OL", "Ada", Guid.NewGuid()), default)).Value!.Suspects;
        var rare = before[^1].FaultIds[0];
        await fixture.Bench.NoteMistakeAsync(first.Id, new(rare, "Mended.", "Ada", Guid.NewGuid()), default);

        clock.Go(TimeSpan.FromSeconds(4.9));
        var early = (await here.StateAsync(second.Id, default))!.Suspects;
        clock.Go(TimeSpan.FromSeconds(0.2));
        var after = (await here.StateAsync(second.Id, default))!.Suspects;

        Assert.Equal(ShareOf(rare, before), ShareOf(rare, early));
        Assert.True(ShareOf(rare, after) > ShareOf(rare, before));
    }

    [Fact]
    public async Task A_mistake_that_the_machine_cannot_have_is_refused()
    {
        await using var fixture = await BenchFixture.OpenAsync();
        var refused = await fixture.Bench.NoteMistakeAsync((await fixture.StartAsync()).Id, new("no-such", "", "Ada", Guid.NewGuid()), default);
        Assert.Equal("no-such-mistake", Assert.Single(refused.Diagnostics).Rule);
    }

    private static double ShareOf(string fault, IReadOnlyList<Suspect> suspects) =>
        suspects.Where(suspect => suspect.FaultIds.Contains(fault)).Sum(suspect => suspect.Probability);

    /// <summary>A clock that goes when it is told to.</summary>
    private sealed class SteppedClock : TimeProvider
    {
        private long _ticks;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => _ticks;

        public void Go(TimeSpan on) => _ticks += on.Ticks;
    }

    private static BuildExperience Build(int found, double expected) => new(
        found == 0 ? new Dictionary<string, int>() : new() { ["ends-swapped"] = found },
        new Dictionary<string, double> { ["ends-swapped"] = expected });

    private static Fault Fault(double prior) => new("ends-swapped:W1", "ends-swapped", "", [], Severity.Damage, "", prior, "");
}
