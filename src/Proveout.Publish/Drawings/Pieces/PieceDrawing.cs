using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>
/// Draws the parts of a test piece side by side with arrows at both sides of each numbered length: arrows that meet over material for outside jaws,
/// arrows that part in a window for inside jaws. In the colours of the page, so light and dark.
/// </summary>
public static class PieceDrawing
{
    private const double Arrow = 3.2;
    private const double Disc = 2.9;
    private const double Margin = 14;
    private const double RowGap = 9;

    private static readonly TextStyle Number = new(3.8, "middle");
    private static readonly TextStyle Name = new(4.2, "middle");

    /// <summary>The drawing, as an SVG element.</summary>
    /// <param name="title">What it shows, for those who do not see it.</param>
    /// <param name="description">The same at length.</param>
    /// <param name="rows">Shapes, a list for each row from above.</param>
    public static string Of(string title, string description, IReadOnlyList<IReadOnlyList<DrawnShape>> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var width = rows.Max(WidthOf);
        var drawing = Shape.Element("svg", ("role", "img"), ("class", "plot"));
        drawing.Add(Shape.Title(title), new XElement(drawing.Name.Namespace + "desc", PlainText.Clean(description)));
        var top = 0.0;
        foreach (var row in rows)
        {
            var height = row.Max(HeightOf);
            var left = (width - WidthOf(row)) / 2;
            foreach (var shape in row)
            {
                drawing.Add(Draw(shape, left + Margin, top + Margin + height));
                left += ExtentOf(shape) + (2 * Margin);
            }

            top += height + (2 * Margin) + RowGap;
        }

        drawing.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {width:0.##} {top:0.##}"));
        return drawing.ToString(SaveOptions.DisableFormatting);
    }

    private static double WidthOf(IReadOnlyList<DrawnShape> row) => row.Sum(shape => ExtentOf(shape) + (2 * Margin));

    private static double ExtentOf(DrawnShape shape) => shape.Lines[0].Max(point => point.Across);

    private static double HeightOf(DrawnShape shape) => shape.Lines[0].Max(point => point.Up);

    private static XElement Draw(DrawnShape shape, double left, double low)
    {
        var path = new StringBuilder();
        foreach (var line in shape.Lines)
        {
            foreach (var (index, point) in line.Index())
                path.Append(CultureInfo.InvariantCulture, $"{(index == 0 ? 'M' : 'L')}{left + point.Across:0.##} {low - point.Up:0.##}");
            path.Append('Z');
        }

        var body = Shape.Path(path.ToString(), Shape.Ink, Shape.Ink, 0.4);
        body.SetAttributeValue("fill-opacity", "0.14");
        body.SetAttributeValue("fill-rule", "evenodd");
        var group = Shape.Group(false, body);
        foreach (var measure in shape.Measures)
            group.Add(Marks(measure, left, low));
        foreach (var (line, words) in new[] { shape.Name, shape.View }.Index())
            group.Add(Shape.Text(words, left + (ExtentOf(shape) / 2), low + Margin + 1 + (5.2 * line), Name, ExtentOf(shape) + (2 * Margin)));
        return group;
    }

    private static IEnumerable<XElement> Marks(DrawnMeasure measure, double left, double low)
    {
        var (from, to) = ((X: left + measure.From.Across, Y: low - measure.From.Up), (X: left + measure.To.Across, Y: low - measure.To.Up));
        var length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        // Out of the measured length for outside jaws, into it for inside ones.
        var sign = measure.IsInside ? 1 : -1;
        var (x, y) = (sign * (to.X - from.X) / length, sign * (to.Y - from.Y) / length);
        yield return Tip(from.X, from.Y, x, y);
        yield return Tip(to.X, to.Y, -x, -y);
        // Numbers of windows stand at the far side, so that they keep clear of those of the ring within.
        var reach = Arrow + Disc;
        var (atX, atY) = measure.IsInside ? (to.X - (reach * x), to.Y - (reach * y)) : (from.X + (reach * x), from.Y + (reach * y));
        var disc = Shape.Circle(atX, atY, Disc, Paper.Ground, Shape.Ink, 0.3);
        disc.Add(Shape.Title($"{measure.Number}: {measure.Words}"));
        yield return disc;
        yield return Shape.Text(measure.Number.ToString(CultureInfo.InvariantCulture), atX, atY + (Number.Size * 0.35), Number, 2 * Disc);
    }

    // An arrow whose tip touches the side and whose shaft comes from the way given.
    private static XElement Tip(double x, double y, double wayX, double wayY) => Shape.Path(
        string.Create(
            CultureInfo.InvariantCulture,
            $"M{x + (Arrow * wayX):0.##} {y + (Arrow * wayY):0.##}L{x:0.##} {y:0.##}M{x + (1.6 * wayX) - (0.8 * wayY):0.##} {y + (1.6 * wayY) + (0.8 * wayX):0.##}L{x:0.##} {y:0.##}L{x + (1.6 * wayX) + (0.8 * wayY):0.##} {y + (1.6 * wayY) - (0.8 * wayX):0.##}"),
        "none", Shape.Ink, 0.5);
}
