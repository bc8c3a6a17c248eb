using System.Globalization;
using System.Text.RegularExpressions;
using PdfSharp.Drawing;
using Proveout.Publish.Drawings;

namespace Proveout.Publish.Tests.Drawings;

public sealed partial class SchematicDrawingTests
{
    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Every_conductor_is_drawn_on_one_sheet_from_end_to_end(string machine)
    {
        var drawn = new List<string>();
        foreach (var sheet in Sheets(machine))
        {
            foreach (var wire in sheet.Wires())
            {
                var stretches = wire.OrderBy(points => points[0].X).ToList();
                Assert.All(stretches.Zip(stretches.Skip(1)), pair => Assert.Equal(pair.First[^1], pair.Second[0]));
                drawn.Add(wire.Key);
            }
        }

        Assert.Equal(Samples.Design(machine).Conductors.Select(conductor => conductor.Id).Order(), drawn.Order());
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void No_two_labels_overlap_and_none_leaves_its_sheet(string machine) => Assert.All(Sheets(machine), LabelReading.AssertApart);

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void No_label_lies_on_the_wire_of_another_conductor(string machine)
    {
        foreach (var sheet in Sheets(machine))
        {
            var segments = sheet.Wires().SelectMany(wire => wire.SelectMany(points => points.Zip(points.Skip(1)).Select(pair => (Wire: wire.Key, Box: new XRect(pair.First, pair.Second))))).ToList();
            foreach (var (text, box) in sheet.Boxes())
                Assert.DoesNotContain(segments, segment => !text.StartsWith(segment.Wire + " ", StringComparison.Ordinal) && box.IntersectsWith(segment.Box));
        }
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void No_two_conductors_run_on_one_line(string machine)
    {
        foreach (var sheet in Sheets(machine))
        {
            var segments = sheet.Wires().SelectMany(wire => wire.SelectMany(points => points.Zip(points.Skip(1)).Select(pair => (Wire: wire.Key, Box: new XRect(pair.First, pair.Second))))).ToList();
            foreach (var one in segments)
                Assert.DoesNotContain(segments, other => other.Wire != one.Wire && LieOnEachOther(one.Box, other.Box));
        }
    }

    [Theory]
    [InlineData("alderbrook")]
    [InlineData("pennywort")]
    [InlineData("quarrymoor")]
    public void Every_place_of_a_part_names_all_its_other_places(string machine)
    {
        var places = Sheets(machine).SelectMany((sheet, index) => Headings(sheet, index + 1)).ToLookup(heading => heading.Designation);
        Assert.Contains(places, place => place.Count() > 1);
        foreach (var part in places)
            foreach (var heading in part)
                Assert.Equal(
                    part.Where(other => other != heading).Select(other => other.Place).Order(StringComparer.Ordinal),
                    heading.References.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_coil_and_its_contacts_name_each_other()
    {
        var words = Sheets("alderbrook").SelectMany(sheet => sheet.Words).ToList();
        Assert.Contains(words, word => word.StartsWith("contacts ", StringComparison.Ordinal));
        Assert.Contains(words, word => word.StartsWith("coil ", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheets_are_ordered_by_function_and_mains_says_to_isolate_first()
    {
        var sheets = SchematicDrawing.Of(Samples.Design("alderbrook"));
        Assert.Equal("Mains", sheets[0].Title);
        Assert.Contains("Isolate, lock off and prove dead", string.Concat(SvgReading.Of(sheets[0]).Words));
        string[] functions = ["Mains", "Protective earth", "Supply and controller power", "Controller outputs", "Motors", "Sensors", "Data"];
        Assert.Equal(functions, sheets.Select(sheet => sheet.Title.Split(',')[0]).Distinct());
    }

    [Fact]
    public void Equal_designs_give_equal_sheets() =>
        Assert.Equal(SchematicDrawing.Of(Samples.Design("quarrymoor")), SchematicDrawing.Of(Samples.Design("quarrymoor")));

    [Fact]
    public void A_machine_without_conductors_has_no_sheets() =>
        Assert.Empty(SchematicDrawing.Of(SampleDesign.Machine with { Conductors = [] }));

    private static List<SvgReading> Sheets(string machine) => [.. SchematicDrawing.Of(Samples.Design(machine)).Select(SvgReading.Of)];

    // Crossing is allowed, lying along each other is not.
    private static bool LieOnEachOther(XRect one, XRect other)
    {
        var width = Math.Min(one.Right, other.Right) - Math.Max(one.Left, other.Left);
        var height = Math.Min(one.Bottom, other.Bottom) - Math.Max(one.Top, other.Top);
        return (one.Height == 0 && other.Height == 0 && one.Top == other.Top && width > 0) || (one.Width == 0 && other.Width == 0 && one.Left == other.Left && height > 0);
    }

    /// <summary>Each designation with the place where it stands and the places that the lines right below it name.</summary>
    private static IEnumerable<Heading> Headings(SvgReading sheet, int number)
    {
        var texts = sheet.Root.Descendants(SvgReading.Svg + "text").Select(text => (Words: text.Value, X: At(text, "x"), Y: At(text, "y"), Size: At(text, "font-size"))).ToList();
        for (var index = 0; index < texts.Count; index++)
            if (texts[index].Size == 3.2)
            {
                var head = texts[index];
                var lines = texts.Skip(index + 1).TakeWhile((line, at) => line.X == head.X && Math.Abs(line.Y - head.Y - (3 * (at + 1))) < 0.05).Select(line => line.Words);
                var column = (int)((head.X - 10) / (277.0 / 8)) + 1;
                yield return new(head.Words, FormattableString.Invariant($"{number}/{column}"), [.. PlaceName().Matches(string.Join(" ", lines)).Select(match => match.Value)]);
            }
    }

    private static double At(System.Xml.Linq.XElement text, string name) => double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\b\d+/\d\b")]
    private static partial Regex PlaceName();

    private sealed class Heading(string designation, string place, IReadOnlyList<string> references)
    {
        public string Designation { get; } = designation;

        public string Place { get; } = place;

        public IReadOnlyList<string> References { get; } = references;
    }
}
