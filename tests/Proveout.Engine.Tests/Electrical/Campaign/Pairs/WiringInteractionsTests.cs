using Proveout.Engine.Electrical;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Several faults at once, check by check, and what is known of them without arithmetic.</summary>
public sealed class WiringInteractionsTests
{
    private static readonly Lazy<(WiringCampaign Campaign, FaultDictionary Dictionary)> Sample = new(() =>
    {
        var campaign = new WiringCampaign(Repository.Design("pennywort"));
        return (campaign, campaign.Run());
    });

    [Fact]
    public void Three_faults_at_once_show_at_every_check_what_a_simulation_of_all_checks_shows()
    {
        var (campaign, _) = Sample.Value;
        var simulator = new WiringSimulator(campaign);
        var random = new Random(1);
        for (var turn = 0; turn < 25; turn++)
        {
            int[] faults = [.. Enumerable.Range(0, 3).Select(_ => random.Next(campaign.Faults.Count))];
            if (simulator.Shown(faults, 0) is null)
                continue;
            var together = campaign.SimulateTogether(faults);
            for (var check = 0; check < campaign.CandidateCount; check++)
                AssertSame(together[check], simulator.Shown(faults, check)!.Value);
        }
    }

    [Fact]
    public void One_fault_alone_shows_what_the_dictionary_says()
    {
        var (campaign, dictionary) = Sample.Value;
        var simulator = new WiringSimulator(campaign);
        for (var fault = 0; fault < campaign.Faults.Count; fault += 13)
            for (var check = 0; check < campaign.CandidateCount; check++)
                AssertSame(dictionary.IntervalOf(fault, check), simulator.Shown([fault], check)!.Value);
    }

    [Fact]
    public void Faults_that_move_the_same_end_contradict_each_other()
    {
        var (campaign, _) = Sample.Value;
        var moves = campaign.Faults.Index().Where(item => item.Item.Fault.Kind == "end-on-neighbour").ToArray();
        var (one, two) = (from first in moves
                          from second in moves
                          where first.Index < second.Index && first.Item.Changes[0] == second.Item.Changes[0]
                          select (first.Index, second.Index)).First();
        Assert.Null(new WiringSimulator(campaign).Shown([one, two], 0));
        Assert.Contains(two, new WiringInteractions(campaign).Contradicting(one));
    }

    [Theory]
    [InlineData("pennywort")]
    [InlineData("alderbrook")]
    public void No_fault_overturns_a_verdict_that_is_not_said_to(string sample)
    {
        var campaign = new WiringCampaign(Repository.Design(sample));
        var dictionary = campaign.Run();
        var interactions = new WiringInteractions(campaign);
        var random = new Random(2);
        var tried = 0;
        for (var turn = 0; turn < 4000; turn++)
        {
            var fault = random.Next(campaign.Faults.Count);
            var check = random.Next(campaign.CandidateCount);
            if (turn % 2 == 0 && dictionary.ChecksThatCatch(fault).ToArray() is { Length: > 0 } catching)
                check = catching[random.Next(catching.Length)];
            var isCaught = dictionary.IsSurelyCaught(fault, check);
            if (interactions.Overturning([fault], check, isCaught, thoroughly: true) is not { } overturning)
                continue;
            int[] others = [.. Enumerable.Range(0, 2).Select(_ => random.Next(campaign.Faults.Count)).Where(other => Array.BinarySearch(overturning, other) < 0)];
            if (interactions.Shown([fault, .. others], check) is not { } shown)
                continue;
            tried++;
            Assert.Equal(isCaught, shown.IsDisjointFrom(dictionary.Checks[check].Expectation));
            Assert.Equal(isCaught, interactions.IsSurelyCaught([fault, .. others], check));
        }

        Assert.True(tried > 2000, $"Only {tried} verdicts were tried.");
    }

    [Fact]
    public void A_verdict_on_six_loads_side_by_side_is_overturned_by_what_touches_them_alone()
    {
        // No four of them hold the reading as low as all six do.
        var loads = string.Join('\n', Enumerable.Range(1, 6).Select(load => $"    load{load}: {{kind: resistor, between: [In, Out], value: 300 kohm +-10 %}}"));
        var campaign = new WiringCampaign(SmallMachine.Read(
            parts: "A1: {type: bank, name: One}\nA2: {type: bank, name: Other}\nX1: {type: strip, name: Strip}",
            conductors: "W1: {from: A1.In, to: X1.One, section: 1 mm2, colour: black, length: 2 m}\nW2: {from: A2.In, to: X1.Other, section: 1 mm2, colour: black, length: 2 m}",
            types: $$$"""
                bank:
                  name: Bank of loads
                  letter: A
                  terminals: {In: {role: passive}, Out: {role: passive}}
                  circuit:
                {{{loads}}}
                strip:
                  name: Strip
                  letter: X
                  terminals: {One: {role: passive}, Other: {role: passive}}
                """));
        var dictionary = campaign.Run();
        var check = dictionary.Checks.Index().First(item => item.Item.Points.Count == 2 && item.Item.Points.All(point => point.Subject == "A1")).Index;

        var overturning = new WiringInteractions(campaign).Overturning([], check, isCaught: false, thoroughly: true);

        Assert.NotNull(overturning);
        Assert.Contains(overturning, fault => campaign.Faults[fault].Fault.Id.Contains("A1", StringComparison.Ordinal));
        Assert.DoesNotContain(overturning, fault => campaign.Faults[fault].Fault.Id == "conductor-missing:W2");
    }

    private static void AssertSame(ReadingInterval expected, ReadingInterval actual)
    {
        AssertSame(expected.Low, actual.Low);
        AssertSame(expected.High, actual.High);
    }

    private static void AssertSame(double expected, double actual) =>
        Assert.True(expected.Equals(actual) || Math.Abs(expected - actual) <= 1e-7 * Math.Abs(expected), $"{expected} is not {actual}");
}
