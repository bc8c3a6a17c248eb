using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Heat of the parts of the sample's bay, against hand arithmetic from its part types.</summary>
public sealed class MachineLossesTests
{
    private static readonly MachineDesign Design = Repository.Design("alderbrook");
    private static readonly IReadOnlyList<Part> Parts = BayParts.Of(Design, Design.Bays[0]);
    private static readonly MachineLosses Losses = MachineLosses.Of(Design, Parts, 0.8);

    private static LossLine Line(string part, LossKind kind) => Losses.Lines.First(line => line.Part == part && line.Kind == kind);

    // 230 V over 105.8 Ω is 2.174 A; 1.6 V at most, a tenth more current: 3.83 W without a break; of the time two fifths at rest.
    [Fact]
    public void The_relay_makes_its_voltage_times_its_current()
    {
        var relay = Line("Q1", LossKind.Switch);
        Assert.Equal(1.6 * 1.1 * 230 / 105.8, relay.WorkWatts, 0.01);
        Assert.Equal(0.4 * relay.WorkWatts, relay.RestHighWatts, 0.01);
        var sink = Losses.Switches.Single(found => found.Part == "Q1");
        Assert.Equal((relay.WorkWatts, 1.0, 115.0, "U5", 3.0), (sink.Watts, sink.JunctionToBase, sink.JunctionCelsius, sink.Sink!.Name, sink.Sink.KelvinsPerWatt));
    }

    // Efficiency 88 % by its type, three points either way: what is asked of 24 V, over that.
    [Fact]
    public void The_supply_loses_what_its_efficiency_leaves()
    {
        var asked = Losses.Supplies.Single(supply => supply.Part == "T1");
        Assert.Equal(14.6, asked.LimitAmperes);
        var watts = 24 * asked.WorkAmperes;
        Assert.Equal((1.1 * watts * ((1 / 0.85) - 1)) + (0.015 * 24 * 14.6), Line("T1", LossKind.Conversion).WorkWatts, 0.01);
    }

    [Fact]
    public void A_fan_counts_with_what_its_type_says_that_it_takes() => Assert.Equal(1.1 * 24 * 0.08, Line("G1", LossKind.Electronics).WorkWatts, 1e-9);

    // K1's coil: 24 V over 0.65 to 1.5 kΩ.
    [Fact]
    public void A_coil_counts_with_the_square_of_its_voltage_over_its_resistance()
    {
        var coil = Line("K1", LossKind.Resistance);
        Assert.Equal((24.0 * 24 / 1500, 24.0 * 24 / 650), (coil.RestLowWatts, coil.RestHighWatts));
    }

    [Fact]
    public void Fuses_warm_up_with_the_square_of_the_current()
    {
        var fuses = Line("F8", LossKind.Contacts);
        Assert.InRange(fuses.WorkWatts, 0.2, 2);
        Assert.True(fuses.RestHighWatts < fuses.WorkWatts);
    }

    [Fact]
    public void Every_limit_is_a_number_and_in_order() =>
        Assert.All(Losses.Lines, line => Assert.True(line.RestLowWatts >= 0 && line.RestLowWatts <= line.RestHighWatts && line.RestHighWatts <= line.WorkWatts + 1e-9 && double.IsFinite(line.WorkWatts), line.ToString()));

    [Fact]
    public void A_conductor_outside_counts_for_nothing_and_more_room_lets_more_of_those_that_leave_count()
    {
        Assert.True(MachineLosses.Of(Design, Parts, 0.1).Lines.Single(line => line.Kind == LossKind.Conductors).WorkWatts < Losses.Lines.Single(line => line.Kind == LossKind.Conductors).WorkWatts);
        Assert.DoesNotContain(MachineLosses.Of(Design, [], 0.8).Lines, line => line.WorkWatts > 0);
    }

    [Fact]
    public void A_part_whose_type_says_nothing_is_reported_and_not_guessed()
    {
        var silent = Design with { Parts = Design.Parts.Select(part => part.Designation == "A3" ? part with { Type = part.Type with { Circuit = [] } } : part).ToValueList() };
        var losses = MachineLosses.Of(silent, BayParts.Of(silent, silent.Bays[0]), 0.8);
        Assert.Contains("A3", losses.NotKnown.Select(item => item.Part));
        Assert.DoesNotContain("A3", Losses.NotKnown.Select(item => item.Part));
        var inefficient = Design with { Parts = Design.Parts.Select(part => part.Designation == "T1" ? part with { Type = part.Type with { Ratings = PartRatings.None } } : part).ToValueList() };
        Assert.Contains(MachineLosses.Of(inefficient, BayParts.Of(inefficient, inefficient.Bays[0]), 0.8).NotKnown, item => item.Part == "T1" && item.What.Contains("efficiency", StringComparison.Ordinal));
    }
}
