using System.Xml.Linq;
using Proveout.Engine.Machine;
using Proveout.Publish.Drawings;

namespace Proveout.Publish.Tests.Drawings;

public sealed class BayDrawingTests
{
    private static readonly MachineDesign Machine = Samples.Design("alderbrook");

    private static SvgReading Bay => SvgReading.Of(Assert.Single(BayDrawing.Of(Machine)));

    [Fact]
    public void No_two_labels_of_a_bay_overlap() => LabelReading.AssertApart(Bay);

    [Fact]
    public void The_measure_of_overlapping_labels_finds_one()
    {
        const string sheet = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 100\">"
            + "<text x=\"10\" y=\"10\" font-size=\"3\" text-anchor=\"start\">W101</text><text x=\"14\" y=\"11\" font-size=\"3\" text-anchor=\"start\">W102</text></svg>";
        Assert.ThrowsAny<Exception>(() => LabelReading.AssertApart(SvgReading.Of(new DrawingSheet("", "", sheet))));
    }

    [Fact]
    public void Every_part_that_has_a_place_is_named()
    {
        var words = Bay.Words.ToHashSet();
        Assert.All(MachineLayout.Of(Machine).Placed, placed => Assert.Contains(placed.Part.Designation, words));
    }

    [Fact]
    public void Routes_on_the_surface_bear_their_name_and_how_full_they_are()
    {
        var words = Bay.Words.ToList();
        Assert.Superset(new HashSet<string> { "mains-duct", "low-duct", "signal-duct", "rail" }, words.ToHashSet());
        Assert.True(words.Count(word => word.EndsWith(" %", StringComparison.Ordinal)) >= 3);
    }

    [Fact]
    public void Every_conductor_that_lies_on_the_surface_is_drawn()
    {
        var drawn = Bay.Root.Descendants().Attributes("data-conductor").Select(each => each.Value).ToHashSet();
        var lying = MachineLayout.Of(Machine).Ways.Where(way => way.Legs.Any(leg => leg.Surface == "bay" && leg.Corners.Count > 1));
        Assert.All(lying, way => Assert.Contains(way.Conductor.Id, drawn));
    }

    [Fact]
    public void The_scale_is_one_of_the_standard_and_a_bar_shows_it() =>
        Assert.Contains(Bay.Words, word => word.StartsWith("100 mm, scale 1 : 2;", StringComparison.Ordinal));

    [Fact]
    public void A_machine_without_surfaces_has_no_bay() => Assert.Empty(BayDrawing.Of(Samples.Design("pennywort")));

    [Fact]
    public void A_drawing_says_what_it_shows_and_follows_light_dark_and_print()
    {
        Assert.Equal("img", Bay.Root.Attribute("role")!.Value);
        Assert.Contains("Alderbrook", Bay.Title);
        Assert.Contains("scale 1 : 2", Bay.Description);
        var style = Bay.Root.Element(SvgReading.Svg + "style")!.Value;
        Assert.Contains("prefers-color-scheme:dark", style);
        Assert.Contains("@media print{.drawing{--drawing-ink:#000000;--drawing-paper:#ffffff}}", style);
    }
}
