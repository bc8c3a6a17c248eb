using System.Collections.Concurrent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Every pair of faults against machines built anew with both in them.</summary>
public sealed class PairCampaignTests(ITestOutputHelper output)
{
    private static readonly ConcurrentDictionary<int, Lazy<Judged>> ByRandomSeed = new();

    private static readonly Lazy<Judged> Pennywort = new(() => new Judged(new WiringCampaign(Repository.Design("pennywort"))));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Every_pair_of_a_random_machine_is_judged_as_a_full_rebuild_judges_it(int seed)
    {
        var judged = Of(seed);
        var (plan, report) = (judged.Plan.Checks.ToHashSet(), judged.Report);
        var masked = report.Masked.ToDictionary(pair => (pair.One, pair.Two));
        var noneCaughtCaught = 0L;
        foreach (var (pair, catching) in judged.Rebuilt())
        {
            var isCaught = catching.Any(plan.Contains);
            if (judged.KindOf(pair) == PairKind.NoneCaught)
                noneCaughtCaught += isCaught ? 1 : 0;
            else
                Assert.True(isCaught != masked.ContainsKey(pair), judged.Words(pair));
        }

        Assert.Equal(noneCaughtCaught, report.NoneCaught.Caught);
        output.WriteLine($"{report.Simulated} pairs, {report.Caught} caught, {report.Contradictory} contradictory, {report.Masked.Count} listed, {report.AlsoCatch.Count} ask for a check");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void The_grown_plan_catches_every_dangerous_pair_that_some_check_catches(int seed)
    {
        var judged = Of(seed);
        var grown = PairPlan.Of(judged.Dictionary, new WiringInteractions(judged.Campaign), onlyGreedy: true).Plan.Checks.ToHashSet();
        foreach (var (pair, catching) in judged.Rebuilt())
            if (catching.Length > 0 && judged.SeverityOf(pair) >= Severity.Damage)
                Assert.True(catching.Any(grown.Contains), judged.Words(pair));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_masked_pair_names_exactly_the_checks_that_a_full_rebuild_finds(int seed)
    {
        var judged = Of(seed);
        var rebuilt = judged.Rebuilt();
        foreach (var pair in judged.Report.Masked)
            Assert.Equal(rebuilt[(pair.One, pair.Two)], pair.Shows.CatchingChecks);
    }

    [Fact]
    public void Masked_pairs_of_the_small_sample_are_masked_in_a_full_rebuild()
    {
        var judged = Pennywort.Value;
        var verdicts = new RebuiltVerdicts(judged.Campaign);
        var plan = judged.Plan.Checks.ToHashSet();
        Assert.NotEmpty(judged.Report.Masked);
        foreach (var pair in judged.Report.Masked)
        {
            var catching = verdicts.Catching(pair.One, pair.Two);
            Assert.DoesNotContain(catching, plan.Contains);
            Assert.Equal(catching, pair.Shows.CatchingChecks);
        }
    }

    [Fact]
    public void Pairs_of_the_small_sample_that_are_not_listed_are_caught_in_a_full_rebuild()
    {
        var judged = Pennywort.Value;
        var verdicts = new RebuiltVerdicts(judged.Campaign);
        var plan = judged.Plan.Checks.ToHashSet();
        var masked = judged.Report.Masked.Select(pair => (pair.One, pair.Two)).ToHashSet();
        var random = new Random(20261127);
        for (var turn = 0; turn < 250; turn++)
        {
            var pair = (random.Next(judged.Campaign.Faults.Count / 2), (judged.Campaign.Faults.Count / 2) + random.Next(judged.Campaign.Faults.Count / 2));
            if (judged.KindOf(pair) != PairKind.NoneCaught && !verdicts.Contradict(pair.Item1, pair.Item2) && !masked.Contains(pair))
                Assert.True(verdicts.Catching(pair.Item1, pair.Item2).Any(plan.Contains), judged.Words(pair));
        }
    }

    [Fact]
    public void Every_pair_is_either_simulated_or_contradictory()
    {
        var judged = Pennywort.Value;
        var verdicts = new RebuiltVerdicts(judged.Campaign);
        var count = judged.Campaign.Faults.Count;
        var contradictory = Enumerable.Range(0, count).Sum(two => Enumerable.Range(0, two).Count(one => verdicts.Contradict(one, two)));
        Assert.Equal(contradictory, judged.Report.Contradictory);
        Assert.Equal((long)count * (count - 1) / 2, judged.Report.Simulated + judged.Report.Contradictory);
        Assert.DoesNotContain(judged.Report.Masked, pair => verdicts.Contradict(pair.One, pair.Two));
    }

    [Fact]
    public void A_run_that_is_stopped_and_continued_reports_what_one_run_reports()
    {
        var judged = Pennywort.Value;
        using var stop = new CancellationTokenSource();
        var first = judged.Prepare(null);
        Assert.Throws<OperationCanceledException>(() => first.Run(new StopAfterFirst(stop), stop.Token));
        Assert.InRange(first.Checkpoint.RowsDone, 1, judged.Campaign.Faults.Count - 1);
        var report = judged.Prepare(first.Checkpoint).Run();
        Assert.Equal(judged.Report.Masked.Select(pair => (pair.One, pair.Two)), report.Masked.Select(pair => (pair.One, pair.Two)));
        Assert.Equal(judged.Report with { Masked = [] }, report with { Masked = [] });
    }

    [Fact]
    public void A_pair_of_two_moves_that_exchange_two_ends_of_one_load_leaves_the_same_circuit() =>
        Assert.Contains(Pennywort.Value.Report.Masked, pair => pair.Kind == PairKind.BothCaught && pair.Shows.IsSameCircuit);

    private static Judged Of(int seed) => ByRandomSeed.GetOrAdd(seed, _ => new(() => new Judged(new WiringCampaign(RandomMachine.Of(seed))))).Value;

    private sealed class StopAfterFirst(CancellationTokenSource stop) : IProgress<double>
    {
        public void Report(double value) => stop.Cancel();
    }

    private sealed class Judged
    {
        private Dictionary<(int, int), int[]>? _rebuilt;

        public Judged(WiringCampaign campaign)
        {
            Campaign = campaign;
            Dictionary = campaign.Run();
            Plan = CheckPlan.Of(Dictionary, onlyGreedy: true);
            Report = Prepare(null).Run();
        }

        public WiringCampaign Campaign { get; }

        public FaultDictionary Dictionary { get; }

        public CheckPlan Plan { get; }

        public PairReport Report { get; }

        public PairCampaign Prepare(PairCheckpoint? from) => new(Dictionary, Plan, new WiringInteractions(Campaign), from: from);

        public Dictionary<(int, int), int[]> Rebuilt()
        {
            if (_rebuilt is not null)
                return _rebuilt;
            var verdicts = new RebuiltVerdicts(Campaign);
            return _rebuilt = (from two in Enumerable.Range(0, Campaign.Faults.Count)
                               from one in Enumerable.Range(0, two)
                               where !verdicts.Contradict(one, two)
                               select (one, two)).ToDictionary(pair => pair, pair => verdicts.Catching(pair.one, pair.two));
        }

        public PairKind KindOf((int One, int Two) pair) => (PairKind)new[] { pair.One, pair.Two }.Count(fault => !Plan.Caught.Contains(fault));

        public Severity SeverityOf((int One, int Two) pair) => (Severity)Math.Max((int)Dictionary.Faults[pair.One].Severity, (int)Dictionary.Faults[pair.Two].Severity);

        public string Words((int One, int Two) pair) => $"{Dictionary.Faults[pair.One].Sentence} {Dictionary.Faults[pair.Two].Sentence}";
    }
}
