using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Every three dangerous faults, against a simulation of each at every check of the plan and a machine built anew with all three in it.</summary>
public sealed class TripleCampaignTests(ITestOutputHelper output)
{
    private const int MostRebuilt = 40;

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void Every_triple_is_judged_as_a_simulation_at_every_check_of_the_plan_judges_it(int seed)
    {
        var (campaign, dictionary, plan) = Prepare(new WiringCampaign(RandomMachine.Of(seed)));
        var report = new TripleCampaign(dictionary, plan, new WiringInteractions(campaign)).Run();
        var simulator = new WiringSimulator(campaign);
        var verdicts = new RebuiltVerdicts(campaign);
        int[] faults = [.. Enumerable.Range(0, dictionary.Faults.Count).Where(fault => dictionary.Faults[fault].Severity >= Severity.Damage)];
        var (simulated, contradictory, masked) = (0L, 0L, 0L);
        foreach (var three in faults)
            foreach (var two in faults.TakeWhile(fault => fault < three))
                foreach (var one in faults.TakeWhile(fault => fault < two))
                    if (verdicts.Contradict(one, two) || verdicts.Contradict(one, three) || verdicts.Contradict(two, three))
                    {
                        contradictory++;
                    }
                    else
                    {
                        simulated++;
                        masked += plan.Checks.Any(check => simulator.IsSurelyCaught([one, two, three], check)) ? 0 : 1;
                    }

        output.WriteLine($"{simulated} triples, {masked} masked, {contradictory} contradictory");
        Assert.Equal(new TripleReport(simulated, masked, contradictory, report.Examples), report);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void The_masked_triples_that_it_names_are_masked_in_a_full_rebuild(int seed)
    {
        var (campaign, dictionary, plan) = Prepare(new WiringCampaign(RandomMachine.Of(seed)));
        var verdicts = new RebuiltVerdicts(campaign);
        var checks = plan.Checks.ToHashSet();
        foreach (var triple in new TripleCampaign(dictionary, plan, new WiringInteractions(campaign)).Run().Examples.Take(MostRebuilt))
            Assert.DoesNotContain(verdicts.Catching(triple), checks.Contains);
    }

    [Fact]
    public void A_run_that_is_stopped_and_continued_reports_what_one_run_reports()
    {
        var (campaign, dictionary, plan) = Prepare(new WiringCampaign(Repository.Design("pennywort")));
        using var stop = new CancellationTokenSource();
        var whole = new TripleCampaign(dictionary, plan, new WiringInteractions(campaign)).Run();
        var stopped = new TripleCampaign(dictionary, plan, new WiringInteractions(campaign));
        Assert.Throws<OperationCanceledException>(() => stopped.Run(new StopAfterFirst(stop), stop.Token));
        Assert.True(stopped.Checkpoint.RowsDone > 0);
        var resumed = new TripleCampaign(dictionary, plan, new WiringInteractions(campaign), stopped.Checkpoint).Run();
        Assert.Equal(whole with { Examples = [] }, resumed with { Examples = [] });
        Assert.Equal(whole.Examples, resumed.Examples);
    }

    private static (WiringCampaign Campaign, FaultDictionary Dictionary, CheckPlan Plan) Prepare(WiringCampaign campaign)
    {
        var dictionary = campaign.Run();
        return (campaign, dictionary, CheckPlan.Of(dictionary, onlyGreedy: true));
    }

    private sealed class StopAfterFirst(CancellationTokenSource stop) : IProgress<double>
    {
        public void Report(double value) => stop.Cancel();
    }
}
