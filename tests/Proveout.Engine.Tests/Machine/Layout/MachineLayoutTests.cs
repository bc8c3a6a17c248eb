using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Machine;

/// <summary>Lengths are those that a builder finds with a ruler on the drawing of <see cref="Bay"/>.</summary>
public sealed class MachineLayoutTests
{
    [Fact]
    public void A_part_on_a_rail_sits_astride_its_centre_line() =>
        Assert.Equal(new Rectangle(30, 170, 50, 230), Bay.Layout.PlacedOf("X1")!.Outline);

    [Fact]
    public void A_quarter_turn_lays_a_part_on_its_side() =>
        Assert.Equal(new Rectangle(200, 20, 260, 40), Bay.Layout.PlacedOf("X3")!.Outline);

    [Fact]
    public void Terminals_are_spread_evenly_along_their_edge()
    {
        var part = Bay.Layout.PlacedOf("X2")!;
        Assert.Equal([new(305, 80), new(315, 80), new(310, 20)], new[] { "1", "2", "3" }.Select(part.SpotOf));
    }

    [Fact]
    public void A_quarter_turn_brings_the_upper_edge_to_the_left_with_its_left_end_below()
    {
        var part = Bay.Layout.PlacedOf("X3")!;
        Assert.Equal([new(200, 25), new(200, 35), new(260, 30)], new[] { "1", "2", "3" }.Select(part.SpotOf));
    }

    [Fact]
    public void A_part_on_a_part_moves_with_it()
    {
        var stacked = MachineLayout.Of(Sample.Read(Bay.Text.Replace("mounted: {on: plate, at: 200 x 20 mm, turned: 90 deg}", "mounted: {on: X2, at: 5 x 10 mm}", StringComparison.Ordinal)).Value!).PlacedOf("X3")!;
        Assert.Equal((new Rectangle(305, 30, 325, 90), "X2"), (stacked.Outline, stacked.Carrier!.Designation));
    }

    [Fact]
    public void Room_to_keep_free_turns_with_the_part()
    {
        Assert.Equal(new Rectangle(300, 20, 320, 90), Bay.Layout.PlacedOf("X2")!.Free);
        Assert.Equal(new Rectangle(190, 20, 260, 40), Bay.Layout.PlacedOf("X3")!.Free);
    }

    // 30 mm up to the duct, 345 mm along it, 180 mm down the side to the height of the terminal, 65 mm across; 2 x 50 mm of slack.
    [Fact]
    public void A_conductor_is_as_long_as_its_tails_its_routes_and_its_slack()
    {
        var way = Bay.Layout.WayOf("W1");
        Assert.Equal(30 + 345 + 180 + 65, way.WayMm, 9);
        Assert.Equal(720, way.CutMm);
        Assert.Equal(720, Bay.Design.Conductors[0].Length.Millimeters);
    }

    // 30 mm up, 25 mm back to the end of the duct, 20 mm to the mouth of the chain, 800 mm through it, 120 mm to the motor; slack at one end only.
    [Theory]
    [InlineData("W2")]
    [InlineData("W3")]
    public void A_route_that_leaves_the_surface_is_as_long_either_way(string conductor)
    {
        var way = Bay.Layout.WayOf(conductor);
        Assert.Equal(30 + 25 + 20 + 800 + 120, way.WayMm, 9);
        Assert.Equal(50, way.SlackMm);
        Assert.Equal(1050, way.CutMm);
    }

    [Fact]
    public void Without_a_route_a_conductor_runs_level_and_upright() =>
        Assert.Equal(50 + 10, Bay.Layout.WayOf("W4").WayMm);

    [Fact]
    public void A_length_that_is_given_stands() =>
        Assert.Equal((900, false), (Bay.Design.Conductors[4].Length.Millimeters, Bay.Design.Conductors[4].LengthIsComputed));

    [Fact]
    public void Legs_join_end_to_end()
    {
        foreach (var way in Bay.Layout.Ways)
            foreach (var (leg, next) in way.Legs.Zip(way.Legs.Skip(1)).Where(pair => pair.First.Corners.Count > 0 && pair.Second.Corners.Count > 0))
                Assert.Equal(leg.Corners[^1], next.Corners[0]);
    }

    [Fact]
    public void A_duct_takes_its_inside_and_its_walls() =>
        Assert.Equal([new Rectangle(5.5, 245.5, 394.5, 274.5)], Bay.Layout.RoomOf(Bay.Design.Routes[0]));

    [Fact]
    public void A_machine_with_computed_lengths_is_written_without_them_and_reads_alike()
    {
        var text = MachineWriter.Write(Bay.Design, Sample.Catalogue);
        Assert.DoesNotContain("720 mm", text, StringComparison.Ordinal);
        Assert.Equal(Bay.Design, Sample.Read(text).Value);
    }

    [Fact]
    public void A_conductor_to_a_part_without_a_place_or_reach_needs_a_length()
    {
        var diagnostics = Sample.Read(Bay.Text.Replace("reach: 120 mm, ", "", StringComparison.Ordinal)).Diagnostics;
        Assert.All(diagnostics, diagnostic => Assert.Contains("`M1` has neither a place on a surface nor a `reach`", diagnostic.Message, StringComparison.Ordinal));
        Assert.Equal(["W2", "W3"], diagnostics.Select(diagnostic => diagnostic.Message.Split('`')[1]));
    }

    [Theory]
    [InlineData("mounted: {on: upper, along", "mounted: {on: ^uper, along", "unknown-surface", "uper")]
    [InlineData("on: plate, at: 300 x 20 mm", "on: plate, ^along: 300 mm", "missing-key", "X2")]
    [InlineData("at: 300 x 20 mm", "at: ^300 mm", "wrong-count", "300 mm")]
    [InlineData("at: 300 x 20 mm", "at: ^300 x 20", "no-unit", "300 x 20")]
    [InlineData("size: 400 x 300 x 90 mm", "size: ^400 x 0 mm", "out-of-range", "400 x 0 mm")]
    [InlineData("to: 380 x 200 mm", "to: ^380 x 210 mm", "slanting-rail", "upper")]
    [InlineData("on: plate, from", "on: ^palte, from", "unknown-surface", "palte")]
    [InlineData("below: [\"3\"]", "below: [^\"4\"]", "unknown-terminal", "4")]
    [InlineData("below: [\"3\"]", "below: [^\"1\"]", "duplicate-name", "1")]
    [InlineData("on: plate, at: 300 x 20 mm", "on: ^X2, at: 300 x 20 mm", "carries-itself", "X2")]
    [InlineData("turned: 90 deg", "turned: ^45 deg", "unknown-word", "45 deg")]
    [InlineData("  W2: {from: X1.2, to: M1.A, section: 0.34 mm2, colour: black, route: [top, chain]}", "  ^W2: {from: X1.2, to: M1.A, section: 0.34 mm2, colour: black}", "missing-length", "no route leads")]

    public void What_cannot_be_is_reported_where_it_stands(string right, string wrong, string rule, string offending)
    {
        var marked = Bay.Text.Replace(right, wrong, StringComparison.Ordinal);
        var before = marked[..marked.IndexOf('^', StringComparison.Ordinal)];

        var diagnostic = Sample.Read(marked.Replace("^", "", StringComparison.Ordinal)).Diagnostics[0];

        Assert.Equal(rule, diagnostic.Rule);
        Assert.Contains(offending, diagnostic.Message, StringComparison.Ordinal);
        Assert.Equal(before.Count(sign => sign == '\n') + 1, diagnostic.Place.Line);
    }
}
