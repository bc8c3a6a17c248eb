using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Tests.Drawings;

public class ProbeDrawingTests
{
    private static readonly MachineDesign Machine = SampleDesign.Machine;

    public static TheoryData<string, string, string, string, string, string> Pairs => new()
    {
        { "E1", "A", "", "E1", "B", "" },
        { "X1", "L-OUT", "", "K1", "1", "" },
        { "A1", "HEAT0+", "pins", "A1", "HEAT0-", "pins" },
        { "A1", "HEAT0+", "plug", "A1", "HEAT0+", "pins" },
        { "A1", "FAN-BANK-1-POSITIVE", "plug", "K1", "3", "pins" },
        { "A1", "VIN+", "", "A1", "STOP-Y", "" },
        { "W1", "from", "", "W1", "to", "" },
        { "X1", "bare metal of the rear panel beside the inlet", "", "X1", "PE", "" },
        { "H1", "somewhere that no file names", "", "A1", "TEMP0-A", "" },
    };

    [Fact]
    public void The_drawing_looks_as_it_did() =>
        Snapshot.Match("plug-of-the-heater.svg", SvgReading.Of(Machine, new CheckPoint("A1", "HEAT0+", "plug"), new CheckPoint("K1", "3", "")).Root);

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Words_neither_overlap_nor_leave_the_drawing(string subject, string place, string side, string subject2, string place2, string side2)
    {
        var drawing = SvgReading.Of(Machine, new CheckPoint(subject, place, side), new CheckPoint(subject2, place2, side2));
        AssertApart(drawing);
    }

    [Fact]
    public void Long_names_are_shortened_and_kept_in_full_as_titles()
    {
        var name = new string('W', 80);
        var design = Single("A1", name, Enumerable.Range(1, 30).Select(number => $"{name}-{number}"));
        var drawing = SvgReading.Of(design, new CheckPoint("A1", $"{name}-14", ""), new CheckPoint("A1", $"{name}-15", ""));
        AssertApart(drawing);
        Assert.Contains(drawing.Words, word => word.Contains('…', StringComparison.Ordinal));
        Assert.Contains(drawing.Root.Descendants(SvgReading.Svg + "title"), title => title.Value == $"{name}-14");
    }

    [Fact]
    public void Each_lead_has_its_word_and_its_terminal()
    {
        var drawing = SvgReading.Of(Machine, new CheckPoint("X1", "L-OUT", ""), new CheckPoint("K1", "1", ""));
        Assert.Subset(drawing.Words.ToHashSet(), new HashSet<string> { "red", "L-OUT", "black", "1", "X1", "K1" });
        Assert.Contains("Red lead on L-OUT of X1 Mains inlet.", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("Black lead on 1 of K1 Solid-state relay of the plate heater.", drawing.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void The_tag_of_the_red_lead_is_round_and_that_of_the_black_one_square()
    {
        var drawing = SvgReading.Of(Machine, new CheckPoint("E1", "A", ""), new CheckPoint("E1", "B", ""));
        var tags = drawing.Root.Descendants(SvgReading.Svg + "rect").Where(box => box.Attribute("height")!.Value == "22")
            .ToLookup(box => box.Parent!.Element(SvgReading.Svg + "title")!.Value, box => box.Attribute("rx")!.Value);
        Assert.Equal(["11", "11"], tags["red lead on E1 A"]);
        Assert.Equal(["0", "0"], tags["black lead on E1 B"]);
    }

    [Theory]
    [InlineData("plug", true)]
    [InlineData("pins", false)]
    public void A_lead_points_at_the_half_to_touch_and_the_other_half_is_dim(string side, bool down)
    {
        var drawing = SvgReading.Of(Machine, new CheckPoint("A1", "HEAT0+", side), new CheckPoint("A1", "HEAT0-", side));
        var cables = drawing.Root.Descendants(SvgReading.Svg + "line").Where(line => line.Attribute("stroke-width")!.Value == "2.5"
            && line.Attribute("stroke")!.Value.StartsWith("var(", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, cables.Count);
        Assert.All(cables, line => Assert.Equal(down, (double)line.Attribute("y2")! > (double)line.Attribute("y1")!));
        var dim = Assert.Single(drawing.Root.Elements(SvgReading.Svg + "g"), group => group.Attribute("opacity") is not null);
        Assert.Equal(!down, dim.Value.Contains("pulled off", StringComparison.Ordinal));
    }

    [Fact]
    public void Neighbours_of_a_terminal_among_many_stand_in_their_order()
    {
        var design = Single("A1", "Controller", Enumerable.Range(1, 30).Select(number => $"T{number}"));
        var words = SvgReading.Of(design, new CheckPoint("A1", "T9", "")).Words.Where(word => word.StartsWith('T')).ToList();
        Assert.Equal(["T6", "T7", "T8", "T9", "T10", "T11"], words.Take(6));
    }

    [Fact]
    public void Each_plug_that_is_pulled_off_is_drawn_by_itself()
    {
        var drawing = SvgReading.Of(Machine, new CheckPoint("A1", "HEAT0+", "plug"), new CheckPoint("A1", "FAN-0+", "plug"));
        Assert.Contains("HEATER-0: plug", drawing.Words);
        Assert.Contains("FANS: plug", drawing.Words);
    }

    [Fact]
    public void Pins_that_no_conductor_comes_to_have_no_plug_to_draw()
    {
        var words = SvgReading.Of(Machine, new CheckPoint("A1", "FAN-0+", "pins")).Words.ToList();
        Assert.Contains("FANS: pins", words);
        Assert.Contains("FAN-0+, pins", words);
        Assert.DoesNotContain(words, word => word.Contains("pulled off", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Drawings_of_a_sample_machine_keep_their_words_apart(string sample)
    {
        var design = Samples.Design(sample);
        var points = design.Parts.SelectMany(part => part.Type.Terminals.Select(terminal => new CheckPoint(part.Designation, terminal.Name, "")));
        foreach (var (red, black) in points.Zip(points.Skip(1)))
        {
            var side = design.FindPart(red.Subject)!.Type.ConnectorOf(red.Place) is { Pluggable: true } ? "plug" : "";
            AssertApart(SvgReading.Of(design, red with { Side = side }, black));
        }
    }

    [Fact]
    public void A_check_without_leads_says_so() => Assert.Contains("No leads needed", SvgReading.Of(Machine).Words);

    [Fact]
    public void A_check_with_three_points_is_a_broken_promise()
    {
        CheckPoint point = new("E1", "A", "");
        Assert.Throws<ArgumentException>(() => SvgReading.Of(Machine, point, point, point));
    }

    [Fact]
    public void Drawings_of_different_checks_share_no_identifier()
    {
        var one = SampleDesign.MakeCheck(new CheckPoint("E1", "A", ""));
        var ids = new[] { one, one with { Id = "another" } }
            .SelectMany(check => SvgReading.Of(Machine, check).Root.DescendantsAndSelf().Attributes("id")).Select(id => id.Value).ToList();
        Assert.Equal(4, ids.Distinct().Count());
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\" onload=\"alert(1)")]
    [InlineData("&lt;&amp;]]>")]
    [InlineData("\u0000\u0007\ud800\u202e\uffff")]
    public void Hostile_names_stay_text(string name)
    {
        var design = Single(name, name, [name, "B"]);
        var check = SampleDesign.MakeCheck(new CheckPoint(name, name, name), new CheckPoint(name, "B", "")) with { Id = name, Title = name };
        var drawing = SvgReading.Of(design, check);
        Assert.DoesNotContain(drawing.Root.Descendants(), element => element.Name.LocalName == "script");
        Assert.DoesNotContain(drawing.Root.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        AssertApart(drawing);
    }

    [Fact]
    public void Whatever_things_are_called_the_drawing_is_well_formed() => Prop.ForAll<string, string>((subject, place) =>
    {
        var (thing, terminal) = (subject ?? "", place ?? "");
        return SvgReading.Of(Single(thing, terminal, [terminal, terminal + "2"]), new CheckPoint(thing, terminal, "plug")).Title.Length > 0;
    }).QuickCheckThrowOnFailure();

    private static MachineDesign Single(string designation, string name, IEnumerable<string> terminals) =>
        Machine with { Parts = [SampleDesign.MakePart(designation, name, SampleDesign.MakeType("type", terminals))] };

    private static void AssertApart(SvgReading drawing)
    {
        var boxes = drawing.Boxes();
        var frame = drawing.ViewBox();
        Assert.All(boxes, box => Assert.True(frame.Contains(box.Box), $"'{box.Text}' leaves the drawing: {box.Box}"));
        for (var first = 0; first < boxes.Count; first++)
            for (var second = first + 1; second < boxes.Count; second++)
                Assert.False(boxes[first].Box.IntersectsWith(boxes[second].Box), $"'{boxes[first].Text}' overlaps '{boxes[second].Text}'");
    }
}
