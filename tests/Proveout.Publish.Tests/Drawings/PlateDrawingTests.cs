using System.Globalization;
using System.Xml.Linq;
using Proveout.Engine.Machine;
using Proveout.Publish.Drawings;

namespace Proveout.Publish.Tests.Drawings;

public sealed class PlateDrawingTests
{
    // A lattice of 5 × 4 places that rises to the right by 0.1 mm, zero in its middle.
    private static readonly PlateView Tilted = Of((x, _) => (x / 2000) - 0.05);

    private static PlateView Of(Func<double, double, double> height, double exaggeration = 500)
    {
        ValueList<double> xs = [0, 50, 100, 150, 200];
        ValueList<double> ys = [0, 60, 120, 180];
        return new(
            "plate",
            "Heights as probed",
            "Highest 50 µm at x 200, y 0 mm; lowest −50 µm at x 0, y 0 mm.",
            "A line every 20 µm.",
            new(xs, ys, [.. from y in ys from x in xs select height(x, y)], exaggeration, 0.05, InMicrometres: true),
            [new("−20", -1, [new(60, 0), new(60, 90), new(60, 180)]), new("0", 0, [new(100, 0), new(100, 180)]), new("20", 1, [new(140, 0), new(140, 180)])],
            [new(new(0, 0), "−50 µm"), new(new(100, 60), ""), new(new(200, 0), "50 µm")]);
    }

    private static SvgReading Read(string svg) => SvgReading.Of(new DrawingSheet("", "", svg));

    private static IEnumerable<XElement> Paths(SvgReading drawing) => drawing.Root.Descendants(SvgReading.Svg + "path");

    private static IEnumerable<XElement> Cells(SvgReading drawing) => drawing.Root.Elements(SvgReading.Svg + "g").Elements(SvgReading.Svg + "path");

    [Fact]
    public void No_two_words_of_a_plate_overlap_or_leave_it()
    {
        LabelReading.AssertApart(Read(ContourDrawing.Of(Tilted)));
        LabelReading.AssertApart(Read(SurfaceDrawing.Of(Tilted)));
        LabelReading.AssertApart(Read(SurfaceDrawing.Of(Of((x, y) => (x * y) - 9000, 0.01))));
    }

    [Fact]
    public void Each_line_bears_its_height_and_those_below_zero_are_broken()
    {
        var drawing = Read(ContourDrawing.Of(Tilted));

        Assert.Superset(new HashSet<string> { "−20", "0", "20", "−50 µm", "50 µm", "across: x, mm; up: y, mm" }, drawing.Words.ToHashSet());
        var lines = Paths(drawing).Where(path => path.Attribute("d")!.Value.Contains('L', StringComparison.Ordinal)).ToList();
        Assert.Equal(["5 3", null, null], lines.Select(line => line.Attribute("stroke-dasharray")?.Value));
        Assert.Equal(["1", "2", "1"], lines.Select(line => line.Attribute("stroke-width")!.Value));
    }

    [Fact]
    public void A_plate_is_drawn_with_equal_scales_both_ways()
    {
        var frame = Read(ContourDrawing.Of(Tilted)).Root.Elements(SvgReading.Svg + "rect").First();

        Assert.Equal(200.0 / 180, Number(frame, "width") / Number(frame, "height"), 3);
    }

    [Fact]
    public void The_surface_says_by_how_much_heights_are_exaggerated_and_hatches_what_is_below_zero()
    {
        var drawing = Read(SurfaceDrawing.Of(Tilted));

        Assert.Contains("Heights drawn 500 times larger than the plate.", drawing.Words);
        Assert.Contains("Hatched where below zero", drawing.Description, StringComparison.Ordinal);
        // Of four cells in a row two lie below zero; a hatched one has its outline and two strokes.
        Assert.Equal(6, Paths(drawing).Count(path => path.Attribute("d")!.Value.Count(letter => letter == 'M') == 3));
    }

    [Fact]
    public void Near_cells_are_drawn_after_far_ones()
    {
        var cells = Cells(Read(SurfaceDrawing.Of(Of((_, _) => 0.01)))).Select(path => Number(path.Attribute("d")!.Value)).ToList();

        // The lower the near corner on paper, the nearer the cell when all lie in one plane.
        Assert.Equal(12, cells.Count);
        Assert.True(cells[0] < cells[^1]);
        Assert.Equal(cells.Max(), cells[^1]);
        Assert.Equal(cells.Min(), cells[0]);
    }

    [Fact]
    public void Cells_of_which_a_corner_is_not_known_are_left_out() =>
        Assert.Equal(11, Cells(Read(SurfaceDrawing.Of(Of((x, y) => x == 0 && y == 180 ? double.NaN : 0.01)))).Count());

    [Fact]
    public void Both_fit_one_sheet_with_title_description_and_distinct_names()
    {
        var sheet = Read(PlateSheet.Of(Tilted).Svg);

        Assert.Equal("Plate: Heights as probed", sheet.Title);
        Assert.Contains("lowest −50 µm", sheet.Description, StringComparison.Ordinal);
        var ids = sheet.Root.Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(6, ids.Count);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Equal(2, sheet.Root.Elements(SvgReading.Svg + "svg").Count());
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static double Number(string outline) => double.Parse(outline[1..].Split('L')[0].Split(' ')[1], CultureInfo.InvariantCulture);
}
