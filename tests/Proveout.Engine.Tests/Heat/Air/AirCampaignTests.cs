using Proveout.Engine.Faults;
using Proveout.Engine.Heat;

namespace Proveout.Engine.Tests.Heat;

/// <summary>Mistakes with the air of a bay, in the dictionary of the shared engine.</summary>
public sealed class AirCampaignTests
{
    private static readonly FaultDictionary Dictionary = AirCampaign.Of(SmallBay.Usual);

    private static int IndexOf(string id) => Dictionary.Faults.Index().Single(fault => fault.Item.Id == id).Index;

    private static string[] Catching(string id) => [.. Dictionary.ChecksThatCatch(IndexOf(id)).Select(check => Dictionary.Checks[check].Id)];

    [Theory]
    [InlineData("fan-reversed:fan", "paper:fan")]
    [InlineData("fan-reversed:fan", "paper:slots")]
    [InlineData("fan-open:fan", "fan-current:fan")]
    [InlineData("fan-open:fan", "fan-speed:fan")]
    [InlineData("fan-open:fan", "air-speed:fan")]
    [InlineData("fan-jammed:fan", "fan-speed:fan")]
    [InlineData("fan-slow:fan", "fan-current:fan")]
    [InlineData("fan-slow:fan", "fan-speed:fan")]
    [InlineData("fan-fast:fan", "fan-current:fan")]
    [InlineData("opening-shut:slots", "hand:slots")]
    [InlineData("opening-shut:fan", "air-speed:slots")]
    [InlineData("lid-off", "air-speed:slots")]
    public void A_check_surely_catches_the_mistake(string fault, string check) => Assert.Contains(check, Catching(fault));

    [Fact]
    public void A_jammed_fan_is_not_told_by_its_current_which_may_be_anything() => Assert.DoesNotContain("fan-current:fan", Catching("fan-jammed:fan"));

    [Fact]
    public void A_reversed_fan_moves_air_that_a_hand_feels_and_only_paper_tells_the_way() => Assert.DoesNotContain("hand:fan", Catching("fan-reversed:fan"));

    [Fact]
    public void A_sound_bay_passes_every_check_wherever_its_tolerances_lie()
    {
        var random = new Random(5);
        for (var trial = 0; trial < 10; trial++)
        {
            Between Point(Between between) => between.At(random.NextDouble()) is var value ? new(value, value) : default;
            var one = SmallBay.Usual with
            {
                RestWatts = Point(SmallBay.Usual.RestWatts),
                Openings = [.. SmallBay.Usual.Openings.Select(opening => opening with { SquareMetres = Point(opening.SquareMetres), Coefficient = Point(opening.Coefficient), Fan = opening.Fan is { } fan ? fan with { Speed = Point(fan.Speed) } : null })],
            };
            var own = AirCampaign.Of(one);
            foreach (var (index, check) in own.Checks.Index())
            {
                var expected = Dictionary.Checks[index].Expectation;
                Assert.InRange(check.Expectation.Low, expected.Low - 0.05, expected.High + 0.05);
            }
        }
    }

    [Fact]
    public void The_fewest_checks_catch_everything_that_any_check_catches()
    {
        var plan = CheckPlan.Of(Dictionary);
        Assert.All(plan.Uncaught, fault => Assert.Empty(Dictionary.ChecksThatCatch(fault)));
        Assert.InRange(plan.Checks.Count, 2, 5);
    }

    [Fact]
    public void What_it_does_is_said_with_the_temperature_and_the_part_that_suffers()
    {
        var shut = Dictionary.Faults[IndexOf("opening-shut:slots")];
        Assert.Equal(Severity.Damage, shut.Severity);
        Assert.Contains("at A1, which bears 60 °C around it", shut.Consequence, StringComparison.Ordinal);
        Assert.Equal(Severity.Damage, Dictionary.Faults[IndexOf("fan-fast:fan")].Severity);
    }

    [Fact]
    public void Where_only_a_supply_suffers_it_is_said_how_much_it_still_gives()
    {
        var bay = SmallBay.Usual with { Parts = [SmallBay.Usual.Parts[1]] };
        var fault = AirCampaign.Of(bay).Faults.Single(fault => fault.Id == "opening-shut:slots");
        Assert.Equal(Severity.DoesNotWork, fault.Severity);
        Assert.Contains("60 % are asked of it", fault.Consequence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lid_that_is_off_is_a_shock_hazard_where_mains_is_in_the_bay()
    {
        Assert.NotEqual(Severity.Shock, Dictionary.Faults[IndexOf("lid-off")].Severity);
        Assert.Equal(Severity.Shock, AirCampaign.Of(SmallBay.Usual with { HoldsMains = true }).Faults.Single(fault => fault.Id == "lid-off").Severity);
    }

    // Two fans that draw out through neighbouring grilles: one turned round feeds the other past the parts, so that all air that still flows may carry less away.
    [Fact]
    public void A_fan_that_is_turned_round_beside_another_is_never_told_to_be_harmless()
    {
        var bay = SmallBay.Usual with { Openings = [.. SmallBay.Usual.Openings, SmallBay.Fan("second", SmallBay.Line, blowsOut: true, 0.1)] };
        var sound = new BayClimate(bay);
        var fault = AirCampaign.Of(bay).Faults.Single(fault => fault.Id == "fan-reversed:fan");
        Assert.DoesNotContain("no more than without", fault.Consequence, StringComparison.Ordinal);
        Assert.True(sound.HottestCelsius < 60);
    }

    [Fact]
    public void A_fan_that_stands_is_named_first_when_air_neither_moves_nor_current_flows()
    {
        var first = Diagnosis.Explain(Dictionary, [new Reading("paper:fan", 0), new Reading("fan-current:fan", 0.3), new Reading("hand:slots", 0)])[0];
        Assert.Equal("fan-open:fan", Dictionary.Faults[Assert.Single(first.Faults)].Id);
    }

    [Fact]
    public void Every_set_up_warns_before_it_instructs() => Assert.All(Dictionary.SetUps, setUp => Assert.NotEmpty(setUp.Cautions));
}
