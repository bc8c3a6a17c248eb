using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;

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
        var (campaign, dictionary, plan) = Prepare(seed);
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
        var (campaign, dictionary, plan) = Prepare(seed);
        var verdicts = new RebuiltVerdicts(campaign);
        var checks = plan.Checks.ToHashSet();
        foreach (var triple in new TripleCampaign(dictionary, plan, new WiringInteractions(campaign)).Run().Examples.Take(MostRebuilt))
            Assert.DoesNotContain(verdicts.Catching(triple), checks.Contains);
    }

    [Fact]
    public void A_run_that_is_stopped_and_continued_reports_what_one_run_reports()
    {
        var (campaign, dictionary, plan) = Prepare(3);
        var whole = new TripleCampaign(dictionary, plan, new WiringInteractions(campaign)).Run();
        var shares = new List<double>();
        var halfway = new TripleCampaign(dictionary, plan, new WiringInteractions(campaign));
        halfway.Run(new Shares(shares));
        Assert.Equal(1, shares[^1]);
        var resumed = new TripleCampaign(dictionary, plan, new WiringInteractions(campaign), halfway.Checkpoint).Run();
        Assert.Equal(whole with { Examples = [] }, resumed with { Examples = [] });
    }

    private static (WiringCampaign Campaign, FaultDictionary Dictionary, CheckPlan Plan) Prepare(int seed)
    {
        var campaign = new WiringCampaign(RandomMachine.Of(seed));
        var dictionary = campaign.Run();
        return (campaign, dictionary, CheckPlan.Of(dictionary, onlyGreedy: true));
    }

    private sealed class Shares(List<double> shares) : IProgress<double>
    {
        public void Report(double value) => shares.Add(value);
    }
}
