using Proveout.Engine.Faults;
using Proveout.Engine.Motion;

namespace Proveout.Engine.Tests.Motion;

public sealed class FrameCampaignTests
{
    private static readonly FrameCampaign Campaign = FrameCampaign.Of(new FrameDesign(400, 400, 400) { TapeErrorMillimetres = 0.2 });

    [Fact]
    public void Every_mistake_is_surely_caught_by_some_check()
    {
        var dictionary = Campaign.Dictionary;

        Assert.All(Enumerable.Range(0, dictionary.Faults.Count), fault => Assert.NotEmpty(dictionary.ChecksThatCatch(fault)));
    }

    [Fact]
    public void A_coarse_tape_does_not_claim_to_catch_a_small_skew()
    {
        var coarse = FrameCampaign.Of(new FrameDesign(200, 200, 200) { TapeErrorMillimetres = 1 }).Dictionary;
        var skew = Enumerable.Range(0, coarse.Faults.Count).First(fault => coarse.Faults[fault].Kind == "corner-not-square");

        Assert.DoesNotContain(coarse.IndexOfCheck("diagonals")!.Value, coarse.ChecksThatCatch(skew));
    }

    [Theory]
    // A skewed base shows at the diagonals and at the stops; a racked beam at the stops and at the square; a stop alone only there.
    [InlineData("corner-not-square:wide", -4.0, 0.0, 2.8, 0.0, 0.0, 0.0)]
    [InlineData("frame-twisted:A-C", 0.0, 2.0, 0.0, 0.0, 0.0, 1.8)]
    [InlineData("gantry-racked:left", 0.0, 0.0, -2.0, -1.0, 0.0, 0.0)]
    [InlineData("stop-not-touched:right", 0.0, 0.0, 2.0, 0.0, 0.0, 0.0)]
    [InlineData("rail-crowned:high", 0.0, 0.0, 0.0, 0.0, 0.5, 0.0)]
    [InlineData("rail-not-parallel:low", 0.0, 0.0, 0.0, 0.0, 0.0, -0.5)]
    public void Readings_of_a_mistake_rank_it_first(string mistake, params double[] readings)
    {
        var dictionary = Campaign.Dictionary;

        var found = Diagnosis.Of(dictionary, [.. readings.Select((reading, check) => new Reading(dictionary.Checks[check].Id, reading))], Campaign);

        Assert.True(found.IsOff);
        Assert.Equal(mistake, dictionary.Faults[found.Hypotheses[0].Faults[0]].Id);
    }

    [Fact]
    public void A_real_skew_lies_inside_what_the_mistake_is_said_to_show()
    {
        var design = new FrameDesign(300, 300, 300);

        // Rhombus of side 300 mm skewed by 0.1°: diagonals 423.893667 and 424.634147 mm (law of cosines).
        Assert.Equal(-0.740480, design.DiagonalDifference(0.1 * Math.PI / 180), 5);
    }

    [Fact]
    public void The_same_thing_cannot_be_wrong_both_ways() => Assert.Null(Campaign.Shown([0, 1], 0));
}
