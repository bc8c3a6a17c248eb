using Proveout.Engine.Machine;
using UnitsNet;

namespace Proveout.Workshop.Tests;

/// <summary>The air of the sample's bay, as pages and commands show it.</summary>
public sealed class AirPredictionTests
{
    private static readonly LoadedMachine Machine = Samples.Load("alderbrook");
    private static readonly BayView Bay = ViewOf(bay => bay);

    private static BayView ViewOf(Func<Bay, Bay> change, Func<MachineDesign, MachineDesign>? also = null)
    {
        var design = Machine.Design with { Bays = [change(Machine.Design.Bays[0])] };
        return AirPrediction.Of(Machine.Summary, also?.Invoke(design) ?? design).Bays[0];
    }

    [Fact]
    public void The_sum_of_heat_is_that_of_its_sources()
    {
        Assert.Equal(Bay.RestWatts.Least, Bay.Heat.Sum(heat => heat.RestLeast), 1e-9);
        Assert.Equal(Bay.WorkWatts, Bay.Heat.Sum(heat => heat.WorkMost), 1e-9);
        Assert.All(Bay.Heat, heat => Assert.NotEmpty(heat.How));
    }

    [Fact]
    public void Every_part_of_the_sample_bears_its_air_and_its_relay_stays_cool()
    {
        Assert.All(Bay.Parts, part => Assert.True(part.IsBorne, AirWords.Verdict(part)));
        var relay = Assert.Single(Bay.Switches);
        Assert.Equal(("Q1", "U5", 115.0), (relay.Part, relay.Sink, relay.JunctionLimit));
        Assert.Equal(Bay.RoomCelsius + Bay.Rise.WorkMost!.Value + 5 + (3 * relay.Watts), relay.SinkCelsius!.Value, 1e-9);
        Assert.Equal(relay.SinkCelsius.Value + (1.2 * relay.Watts), relay.JunctionCelsius!.Value, 1e-9);
    }

    [Fact]
    public void What_the_file_says_of_a_part_goes_before_its_type()
    {
        var view = ViewOf(bay => bay with { Contents = [new BayContent("T1") { LeastHeat = Power.FromWatts(10), MostHeat = Power.FromWatts(20), AirLimit = Temperature.FromDegreesCelsius(45), AboveAir = TemperatureDelta.FromKelvins(3) }] });
        var supply = view.Heat.Single(heat => heat.Part == "T1");
        Assert.Equal((10, 20, 20), (supply.RestLeast, supply.RestMost, supply.WorkMost));
        var warmth = view.Parts.Single(part => part.Part == "T1");
        Assert.Equal((45, 3, null), (warmth.BearsUpTo, warmth.AboveAirKelvin, warmth.GivesPercent));
    }

    [Fact]
    public void What_nobody_says_is_named_with_what_to_write_until_somebody_does()
    {
        MachineDesign Silent(MachineDesign design) => design with { Parts = design.Parts.Select(part => part.Designation == "A3" ? part with { Type = part.Type with { Circuit = [] } } : part).ToValueList() };
        Assert.Contains(ViewOf(bay => bay, Silent).NotKnown, sentence => sentence.StartsWith("Heat of A3", StringComparison.Ordinal) && sentence.Contains("most-heat: 5 W", StringComparison.Ordinal));
        Assert.DoesNotContain(
            ViewOf(bay => bay with { Contents = [new BayContent("A3") { MostHeat = Power.FromWatts(6) }] }, Silent).NotKnown, sentence => sentence.StartsWith("Heat of A3", StringComparison.Ordinal));
        Assert.Contains(ViewOf(bay => bay with { Wall = null }).NotKnown, sentence => sentence.StartsWith("The walls", StringComparison.Ordinal));
    }

    [Fact]
    public void A_closed_bay_whose_walls_are_not_known_has_no_limit_in_any_word_or_number()
    {
        var view = ViewOf(bay => bay with { Wall = null, Openings = [] });
        Assert.Equal((null, null), (view.Rise.WorkMost, view.Rise.StillMost));
        Assert.All(view.Parts, part => Assert.False(part.IsBorne));
        Assert.Contains(AirWords.Summary(view), sentence => sentence.Contains("Nothing that is counted on", StringComparison.Ordinal));
        Assert.Null(AirPlots.Parts(view));
        Assert.Null(AirPlots.Curves(view));
    }

    [Fact]
    public void A_bay_that_is_warmer_than_the_review_reckons_with_is_said_so()
    {
        Assert.Contains(AirWords.Summary(Bay with { ReviewCelsius = 40 }), sentence => sentence.Contains("review: {ambient: 50 degC}", StringComparison.Ordinal));
        Assert.DoesNotContain(AirWords.Summary(Bay with { ReviewCelsius = 60 }), sentence => sentence.Contains("review", StringComparison.Ordinal));
    }

    [Fact]
    public void Limits_that_protect_are_rounded_to_the_safe_side()
    {
        var part = new PartWarmth("T1", 5, 54.01, 65.98, "its type", 88.9, 60.2, true);
        Assert.Equal("55 °C", AirWords.Hottest(part.HottestCelsius));
        Assert.Equal("65 °C (its type)", AirWords.Bears(part));
        Assert.Equal("Bears it, with 11 K to spare. It surely gives 88 % of its current then, and at most 61 % are asked of it.", AirWords.Verdict(part));
        Assert.Equal("7.9 to 23.3 m³/h out", AirWords.Flow(new BayWay("grille", "G1", -23.21, -7.99)));
    }

    [Fact]
    public void The_curves_of_fans_and_openings_meet_within_the_flow_that_is_told()
    {
        var points = Bay.Curves.Points;
        Assert.Equal(true, Bay.Curves.FansBlowOut);
        var least = points.Select(point => Math.Min(point.InLeast, point.OutLeast)).Max();
        var most = points.Select(point => Math.Min(point.InMost, point.OutMost)).Max();
        Assert.InRange(least, 0.9 * Bay.Flow.NewLeast, 1.0001 * Bay.Flow.NewLeast);
        Assert.InRange(most, 0.9 * Bay.Flow.NewMost, 1.0001 * Bay.Flow.NewMost);
        Assert.Contains("They meet between", AirPlots.Curves(Bay)!.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fewest_checks_need_no_air_speed_meter_and_say_where_one_would_help()
    {
        Assert.DoesNotContain(Bay.Mistakes.Checks, check => check.Check.Kind == "air-speed");
        Assert.Contains(Bay.Mistakes.Mistakes, row => row.CaughtBy.Count == 0 && row.Fault.OtherEvidence.Contains("air-speed meter surely shows it", StringComparison.Ordinal));
        Assert.Contains(Bay.Mistakes.Mistakes, row => row.Fault.Kind == "fan-reversed" && row.CaughtBy.Any(title => title.StartsWith("Paper", StringComparison.Ordinal)));
    }
}
