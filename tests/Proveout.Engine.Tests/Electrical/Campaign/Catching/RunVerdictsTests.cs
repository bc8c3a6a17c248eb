using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Campaign.Catching;

/// <summary>Which checks catch each fault, found without simulating all that it changes.</summary>
public sealed class RunVerdictsTests
{
    private static readonly Lazy<WiringCampaign> Pennywort = new(() => new WiringCampaign(Repository.Design("pennywort")));

    public static TheoryData<string> Samples => new(Repository.SampleNames);

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_verdict_is_that_of_the_interval_that_the_whole_simulation_finds(string sample) => AreThoseOfIntervals(Repository.Design(sample));

    [Theory]
    [InlineData(1, 40)]
    [InlineData(41, 80)]
    public void So_it_is_on_small_machines_of_random_wiring(int firstSeed, int lastSeed)
    {
        for (var seed = firstSeed; seed <= lastSeed; seed++)
            AreThoseOfIntervals(RandomMachine.Of(seed));
    }

    [Fact]
    public void So_it_is_where_junctions_in_chains_decide()
    {
        var random = new Random(20261130);
        for (var trial = 0; trial < 80; trial++)
            AreThoseOfIntervals(RandomJunctionMachine.Of(random));
    }

    [Fact]
    public void Verdicts_are_those_of_a_dense_solution_of_each_faulty_machine_built_anew()
    {
        var caught = 0;
        for (var seed = 1; seed <= 12; seed++)
        {
            var campaign = new WiringCampaign(RandomMachine.Of(seed));
            var (verdicts, anew) = (campaign.RunVerdicts(cancellation: TestContext.Current.CancellationToken), new RebuiltVerdicts(campaign));
            for (var fault = 0; fault < campaign.Faults.Count; fault++)
            {
                Assert.Equal(anew.Catching(fault), verdicts.ChecksThatCatch(fault));
                caught += verdicts.ChecksThatCatch(fault).Any() ? 1 : 0;
            }
        }

        Assert.True(caught > 100, $"{caught} faults were caught: the trial says little.");
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_resistance_is_expected_to_show_less_than_the_resistances_leave_at_most(string sample)
    {
        // So that no junction or insulation that is gone can make one show too much (CatchPorts).
        foreach (var table in new WiringCampaign(Repository.Design(sample)).Tables().OfType<PortTable>())
            Assert.All(table.Candidates.Index(), item => Assert.True(table.Good[item.Index].HighOhms <= item.Item.Check.Expectation.High, item.Item.Check.Id));
    }

    [Fact]
    public void A_check_is_said_to_catch_a_fault_just_where_it_is_listed()
    {
        var verdicts = Pennywort.Value.RunVerdicts(cancellation: TestContext.Current.CancellationToken);

        foreach (var fault in Enumerable.Range(0, verdicts.Faults.Count).Where(fault => fault % 7 == 0))
            Assert.Equal(verdicts.ChecksThatCatch(fault), Enumerable.Range(0, verdicts.Checks.Count).Where(check => verdicts.IsSurelyCaught(fault, check)));
    }

    [Fact]
    public void What_a_fault_changes_is_the_same_when_it_is_simulated_once_it_is_asked_for()
    {
        var verdicts = Pennywort.Value.RunVerdicts(cancellation: TestContext.Current.CancellationToken);
        var whole = Pennywort.Value.Run(TestContext.Current.CancellationToken);

        // Some alone, then all side by side.
        for (var fault = 0; fault < whole.Faults.Count; fault += 3)
            AreSame(whole.ResponseOf(fault), verdicts.ResponseOf(fault));
        foreach (var (fault, response) in verdicts.ResponsesOf([.. Enumerable.Range(0, whole.Faults.Count)]).Index())
            AreSame(whole.ResponseOf(fault), response);
    }

    [Fact]
    public void A_run_for_verdicts_reports_when_all_is_done()
    {
        var last = new Last();

        Pennywort.Value.RunVerdicts(last, TestContext.Current.CancellationToken);

        Assert.Equal(1, last.Highest);
    }

    [Fact]
    public void A_run_for_verdicts_that_is_stopped_makes_no_dictionary() =>
        Assert.Throws<OperationCanceledException>(() => Pennywort.Value.RunVerdicts(cancellation: new CancellationToken(canceled: true)));

    private static void AreThoseOfIntervals(MachineDesign design)
    {
        var campaign = new WiringCampaign(design);
        var (whole, verdicts) = (campaign.Run(TestContext.Current.CancellationToken), campaign.RunVerdicts(cancellation: TestContext.Current.CancellationToken));
        for (var fault = 0; fault < whole.Faults.Count; fault++)
            Assert.True(
                whole.ChecksThatCatch(fault).SequenceEqual(verdicts.ChecksThatCatch(fault)),
                $"{design.Name}, {whole.Faults[fault].Id}: caught by {string.Join(", ", whole.ChecksThatCatch(fault))}, found {string.Join(", ", verdicts.ChecksThatCatch(fault))}.");
    }

    private static void AreSame(FaultResponse expected, FaultResponse found)
    {
        Assert.Equal(expected.Checks, found.Checks);
        Assert.Equal(expected.Intervals, found.Intervals);
    }

    private sealed class Last : IProgress<double>
    {
        private readonly Lock _lock = new();

        public double Highest { get; private set; }

        public void Report(double value)
        {
            lock (_lock)
                Highest = Math.Max(Highest, value);
        }
    }
}
