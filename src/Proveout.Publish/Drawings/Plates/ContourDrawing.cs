using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>
/// Draws a plate from above by lines of equal height, each with its height on it. Lines above zero are drawn through, those below are broken,
/// zero is heavy: no colour carries meaning, so that it holds on any printer.
/// </summary>
public static class ContourDrawing
{
    /// <summary>Beyond so many points crosses hide the lines and are left out.</summary>
    public const int MostCrosses = 225;

    internal const double Width = 360;
    private const double Left = 46;
    private const double Top = 12;
    private const double Room = 300;
    private const double Tallest = 420;
    private const int MostLabels = 40;
    private static readonly TextStyle Small = new(10, "middle");
    private static readonly TextStyle AtEnd = new(10, "end");
    private static readonly TextStyle Heavy = new(10, "middle", Bold: true);

    /// <summary>The drawing, as an SVG element in the colours of the text around it.</summary>
    public static string Of(PlateView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var drawing = Element(view);
        drawing.SetAttributeValue("class", "plot");
        return drawing.ToString(SaveOptions.DisableFormatting);
    }

    internal static XElement Element(PlateView view)
    {
        var (xs, ys) = (view.Surface.Xs, view.Surface.Ys);
        var scale = Math.Min(Room / (xs[^1] - xs[0]), Tallest / (ys[^1] - ys[0]));
        var bottom = Top + (scale * (ys[^1] - ys[0]));
        var room = new LabelRoom(Width, bottom + 40);
        var drawing = Shape.Element(
            "svg", ("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {Width} {bottom + 40:0.##}")), ("role", "img"), ("aria-labelledby", $"{view.Name}-contour-title {view.Name}-contour-desc"));
        var title = Shape.Title($"{view.Title}: lines of equal height");
        title.SetAttributeValue("id", $"{view.Name}-contour-title");
        var description = Shape.Element("desc", ("id", $"{view.Name}-contour-desc"));
        description.Add(PlainText.Clean($"{view.Words} {view.Scale}"));
        drawing.Add(title, description, Shape.Box(Left, Top, scale * (xs[^1] - xs[0]), bottom - Top, 0, "none", Shape.Ink, 0.75));
        drawing.Add(Axes(view, At, bottom, room));
        drawing.Add(view.Lines.GroupBy(line => line.Label).Select(lines => Line(lines, At)));
        if (view.Marks.Count <= MostCrosses)
            drawing.Add(Crosses(view, At));
        drawing.Add(Noted(view, At, room));
        drawing.Add(Labels(view, At, room));
        return drawing;

        (double X, double Y) At(PlateSpot spot) => (Left + (scale * (spot.X - xs[0])), bottom - (scale * (spot.Y - ys[0])));
    }

    private static IEnumerable<XElement> Axes(PlateView view, Func<PlateSpot, (double X, double Y)> at, double bottom, LabelRoom room)
    {
        var (xs, ys) = (view.Surface.Xs, view.Surface.Ys);
        var right = at(new(xs[^1], ys[0])).X;
        foreach (var tick in PlateTicks.Between(xs[0], xs[^1], 6))
        {
            var x = at(new(tick, ys[0])).X;
            yield return Shape.Line(x, bottom, x, bottom + 4, Shape.Ink, 0.75);
            if (room.TryTake(PlateTicks.Words(tick), x, bottom + 15, Small))
                yield return Shape.Text(PlateTicks.Words(tick), x, bottom + 15, Small, 60);
        }

        foreach (var tick in PlateTicks.Between(ys[0], ys[^1], 6))
        {
            var y = at(new(xs[0], tick)).Y;
            yield return Shape.Line(Left - 4, y, Left, y, Shape.Ink, 0.75);
            if (room.TryTake(PlateTicks.Words(tick), Left - 6, y + 3.5, AtEnd))
                yield return Shape.Text(PlateTicks.Words(tick), Left - 6, y + 3.5, AtEnd, 40);
        }

        var words = "across: x, mm; up: y, mm";
        var middle = Math.Max((Left + right) / 2, 80);
        room.TryTake(words, middle, bottom + 32, Small);
        yield return Shape.Text(words, middle, bottom + 32, Small, Width);
    }

    // All lines of one height are one path.
    private static XElement Line(IEnumerable<PlateLine> lines, Func<PlateSpot, (double X, double Y)> at)
    {
        var path = new StringBuilder();
        foreach (var (index, spot) in lines.SelectMany(line => line.Spots.Index()))
        {
            var (x, y) = at(spot);
            path.Append(index == 0 ? 'M' : 'L').Append(CultureInfo.InvariantCulture, $"{x:0.#} {y:0.#}");
        }

        var side = lines.First().Side;
        var drawn = Shape.Path(path.ToString(), "none", Shape.Ink, side == 0 ? 2 : 1);
        if (side < 0)
            drawn.SetAttributeValue("stroke-dasharray", "5 3");
        return drawn;
    }

    private static XElement Crosses(PlateView view, Func<PlateSpot, (double X, double Y)> at)
    {
        var path = new StringBuilder();
        foreach (var mark in view.Marks)
        {
            var (x, y) = at(mark.Spot);
            path.Append(CultureInfo.InvariantCulture, $"M{x - 2.5:0.#} {y:0.#}h5M{x:0.#} {y - 2.5:0.#}v5");
        }

        return Shape.Path(path.ToString(), "none", Shape.Ink, 0.5);
    }

    private static IEnumerable<XElement> Noted(PlateView view, Func<PlateSpot, (double X, double Y)> at, LabelRoom room)
    {
        foreach (var mark in view.Marks.Where(mark => mark.Words.Length > 0))
        {
            var (x, y) = at(mark.Spot);
            // Words that are wider than the drawing stand in its middle.
            var half = Math.Min(Width / 2.0, (Heavy.Width(mark.Words) / 2) + 2);
            var inside = Math.Clamp(x, half, Width - half);
            yield return Shape.Circle(x, y, 4, "none", Shape.Ink, 1);
            foreach (var place in new[] { y - 7, y + 15 })
                if (room.TryTake(mark.Words, inside, place, Heavy))
                {
                    foreach (var element in Words(mark.Words, inside, place, Heavy))
                        yield return element;
                    break;
                }
        }
    }

    // Longest lines first: where room is short, a small ring goes without, and its neighbours tell its height.
    private static IEnumerable<XElement> Labels(PlateView view, Func<PlateSpot, (double X, double Y)> at, LabelRoom room)
    {
        foreach (var line in view.Lines.OrderByDescending(line => line.Spots.Count).Take(MostLabels))
            foreach (var share in (double[])[0.5, 0.35, 0.65, 0.2, 0.8])
            {
                var (x, y) = at(line.Spots[(int)(share * (line.Spots.Count - 1))]);
                if (!room.TryTake(line.Label, x, y + 3.5, Small))
                    continue;
                foreach (var element in Words(line.Label, x, y + 3.5, Small))
                    yield return element;
                break;
            }
    }

    private static XElement[] Words(string words, double x, double y, TextStyle style)
    {
        var wide = style.Width(words);
        return [Shape.Box(x - (wide / 2), y - (0.8 * style.Size), wide, style.Size, 1, Paper.Ground, "none", 0), Shape.Text(words, x, y, style, wide + 1)];
    }
}
