using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>Draws the belts of one plane with the axes in one place; in the colours of the page, so light and dark.</summary>
public static class BeltDrawing
{
    private const double Line = 3;
    private static readonly string[] Dashes = ["none", "14 6", "3 5", "14 5 3 5"];
    private const double LegendIndent = 58;
    private const double LegendEnd = 12;

    private static readonly TextStyle Name = new(11);

    /// <summary>The drawing, as an SVG element.</summary>
    /// <param name="title">What it shows, for those who do not see it.</param>
    /// <param name="description">The same at length.</param>
    /// <param name="belts">The belts; each has a dash pattern of its own besides its name.</param>
    /// <param name="marks">Pulleys, idlers and anchors.</param>
    public static string Of(string title, string description, IReadOnlyList<DrawnBelt> belts, IReadOnlyList<BeltMark> marks)
    {
        ArgumentNullException.ThrowIfNull(belts);
        ArgumentNullException.ThrowIfNull(marks);
        var drawing = Shape.Element("svg", ("role", "img"), ("class", "plot"));
        var extent = BeltExtent.Of(marks, belts);
        drawing.SetAttributeValue("viewBox", extent.ViewBox);
        drawing.Add(Shape.Title(title), new XElement(drawing.Name.Namespace + "desc", PlainText.Clean(description)));
        drawing.Add(Content(belts, marks), Legend(belts, extent));
        return drawing.ToString(SaveOptions.DisableFormatting);
    }

    /// <summary>Room around a drawing, in millimetres of the machine.</summary>
    internal const double Margin = 40;

    /// <summary>Belts and what they run over, in place.</summary>
    internal static IEnumerable<XElement> Content(IReadOnlyList<DrawnBelt> belts, IReadOnlyList<BeltMark> marks) =>
        [.. belts.Index().Select(belt => Stroke(PathOf(belt.Item), belt.Index)), .. marks.Select(MarkOf)];

    /// <summary>Width that the names of the belts need, with their dashes.</summary>
    internal static double LegendWidth(IReadOnlyList<DrawnBelt> belts) =>
        LegendIndent + LegendEnd + belts.Select(belt => Name.Width(PlainText.Clean(belt.Name))).DefaultIfEmpty(0).Max();

    /// <summary>The name of each belt with its dashes, below.</summary>
    internal static IEnumerable<XElement> Legend(IReadOnlyList<DrawnBelt> belts, BeltExtent extent)
    {
        foreach (var (index, belt) in belts.Index())
        {
            yield return Stroke(string.Create(CultureInfo.InvariantCulture, $"M{extent.Left + 10:0.##} {-extent.Low + 10 + (20 * index):0.##}h40"), index);
            yield return Shape.Text(belt.Name, extent.Left + LegendIndent, -extent.Low + 14 + (20 * index), Name, extent.Right - extent.Left - LegendIndent - LegendEnd);
        }
    }

    private static XElement Stroke(string path, int index)
    {
        var stroke = Shape.Path(path, "none", Shape.Ink, Line);
        stroke.SetAttributeValue("stroke-dasharray", Dashes[index % Dashes.Length]);
        return stroke;
    }

    // Upward in the machine is downward in SVG, so that a bend to the left has sweep 0.
    private static string PathOf(DrawnBelt belt)
    {
        var path = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"M{belt.StartX:0.##} {-belt.StartY:0.##}"));
        foreach (var bend in belt.Bends)
            path.Append(CultureInfo.InvariantCulture, $"L{bend.FromX:0.##} {-bend.FromY:0.##}A{bend.Radius:0.##} {bend.Radius:0.##} 0 {(bend.IsLong ? 1 : 0)} {(bend.IsLeft ? 0 : 1)} {bend.ToX:0.##} {-bend.ToY:0.##}");
        return path.Append(CultureInfo.InvariantCulture, $"L{belt.EndX:0.##} {-belt.EndY:0.##}").ToString();
    }

    private static XElement MarkOf(BeltMark mark)
    {
        var shape = mark.Radius > 0
            ? Shape.Circle(mark.X, -mark.Y, mark.Radius, "none", Shape.Ink, mark.Motor.Length > 0 ? 2 : 1)
            : Shape.Box(mark.X - 4, -mark.Y - 4, 8, 8, 1, Shape.Ink, Shape.Ink, 1);
        if (mark.IsToothed)
            shape.SetAttributeValue("stroke-dasharray", "1.5 1");
        var group = Shape.Group(false, shape);
        if (mark.Motor.Length > 0)
            group.Add(Shape.Text(mark.Motor, mark.X + mark.Radius + 4, -mark.Y + 4, Name, 60));
        group.Add(Shape.Title(mark.Motor.Length > 0 ? $"{mark.Name}, turned by {mark.Motor}" : mark.Name));
        return group;
    }
}
