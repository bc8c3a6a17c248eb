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

    [Theory]
    [InlineData("seen-wave", "rail-crowned")]
    [InlineData("seen-map-twist", "frame-twisted")]
    public void A_symptom_alone_ranks_the_mistakes_that_show_it(string symptom, string kind)
    {
        var found = Diagnosis.Of(Campaign.Dictionary, [new Reading(symptom, 0)], Campaign);

        Assert.True(found.IsOff);
        Assert.Equal(kind, Campaign.Dictionary.Faults[found.Hypotheses[0].Faults[0]].Kind);
    }

    [Fact]
    public void A_gantry_that_touches_one_stop_first_while_squares_are_square_has_a_stop_or_a_base_to_blame()
    {
        var found = Diagnosis.Of(Campaign.Dictionary, [new Reading("seen-touch", 0), new Reading("seen-skew", 1)], Campaign);

        Assert.DoesNotContain(found.Hypotheses.Take(4), hypothesis => hypothesis.Faults.Any(fault => Campaign.Dictionary.Faults[fault].Kind == "gantry-racked"));
    }

    [Fact]
    public void Two_mistakes_that_both_show_are_seen_as_one()
    {
        var dictionary = Campaign.Dictionary;
        var (corner, stop) = (Index("corner-not-square:wide"), Index("stop-not-touched:right"));

        Assert.Equal(new ReadingInterval(0, 0), Campaign.Shown([corner, stop], dictionary.IndexOfCheck("seen-touch")!.Value));
        Assert.Equal(new ReadingInterval(0, 1), Campaign.Shown([corner, stop], dictionary.IndexOfCheck("seen-skew")!.Value));

        int Index(string id) => Enumerable.Range(0, dictionary.Faults.Count).Single(fault => dictionary.Faults[fault].Id == id);
    }

    [Fact]
    public void The_plan_finds_every_mistake_without_a_symptom() =>
        Assert.Empty(CheckPlan.Of(Campaign.Dictionary, mayUse: check => !Symptom.Is(Campaign.Dictionary.Checks[check])).Uncaught);
}
