using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>
/// Draws a plate in isometric axonometry (ISO 5456-3), seen from the front, far cells first so that near ones cover them. Cells below zero are hatched;
/// no colour carries meaning.
/// </summary>
public static class SurfaceDrawing
{
    internal const double Width = 360;
    private const double Room = 290;
    private const double Top = 24;
    private static readonly double Cosine = Math.Cos(Math.PI / 6);
    private static readonly TextStyle Small = new(10, "middle");
    private static readonly TextStyle AtStart = new(10);

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
        var surface = view.Surface;
        double[] known = [.. surface.Heights.Where(double.IsFinite)];
        var (low, high) = (Math.Min(0, known.Min()), Math.Max(0, known.Max()));
        var (wide, deep) = (surface.Xs[^1] - surface.Xs[0], surface.Ys[^1] - surface.Ys[0]);
        var scale = Room / ((wide + deep) * Cosine);
        var lift = scale * surface.Exaggeration;
        var front = Top + (lift * (high - low)) + (scale * (wide + deep) / 2);
        var middle = 20 + (scale * deep * Cosine);
        var drawing = Shape.Element(
            "svg", ("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {Width} {front + 52:0.##}")), ("role", "img"), ("aria-labelledby", $"{view.Name}-surface-title {view.Name}-surface-desc"), ("stroke-linejoin", "round"));
        var title = Shape.Title($"{view.Title}: surface");
        title.SetAttributeValue("id", $"{view.Name}-surface-title");
        var description = Shape.Element("desc", ("id", $"{view.Name}-surface-desc"));
        description.Add(PlainText.Clean($"{view.Words} {Stated(surface)} Seen from the front, right-hand edge to the right. Hatched where below zero."));
        drawing.Add(title, description, Base(surface, At, low), CellsOf(surface, At), Posts(surface, At, low), Figures(surface, At, low, front), Ladder(surface, lift, low, high, front));
        drawing.Add(Shape.Text(Stated(surface), 8, front + 46, AtStart, Width - 16));
        return drawing;

        (double X, double Y) At(double x, double y, double height) => (
            middle + (scale * (x - surface.Xs[0] - (y - surface.Ys[0])) * Cosine),
            front - (scale * (x - surface.Xs[0] + (y - surface.Ys[0])) / 2) - (lift * (height - low)));
    }

    /// <summary>By how much heights are drawn larger.</summary>
    internal static string Stated(PlateSurface surface) => $"Heights drawn {PlateTicks.Words(surface.Exaggeration)} times larger than the plate.";

    // The floor below the lowest point, so that slopes can be judged against something.
    private static XElement Base(PlateSurface surface, Func<double, double, double, (double X, double Y)> at, double low) =>
        Shape.Path(Outline([at(surface.Xs[0], surface.Ys[0], low), at(surface.Xs[^1], surface.Ys[0], low), at(surface.Xs[^1], surface.Ys[^1], low), at(surface.Xs[0], surface.Ys[^1], low)]), "none", Shape.Ink, 0.5);

    private static XElement CellsOf(PlateSurface surface, Func<double, double, double, (double X, double Y)> at)
    {
        var group = Shape.Element("g", ("fill", Paper.Ground), ("stroke", Shape.Ink), ("stroke-width", 0.6));
        group.Add(Cells(surface, at));
        return group;
    }

    // The greater column and row together, the further a cell is from the eye (painter's order).
    private static IEnumerable<XElement> Cells(PlateSurface surface, Func<double, double, double, (double X, double Y)> at)
    {
        var (columns, rows) = (surface.Xs.Count - 1, surface.Ys.Count - 1);
        foreach (var (column, row) in from row in Enumerable.Range(0, rows)
                                      from column in Enumerable.Range(0, columns)
                                      orderby column + row descending, row
                                      select (column, row))
        {
            double[] heights = [surface.At(column, row), surface.At(column + 1, row), surface.At(column + 1, row + 1), surface.At(column, row + 1)];
            if (heights.Any(double.IsNaN))
                continue;
            (double X, double Y)[] corners =
            [
                at(surface.Xs[column], surface.Ys[row], heights[0]), at(surface.Xs[column + 1], surface.Ys[row], heights[1]),
                at(surface.Xs[column + 1], surface.Ys[row + 1], heights[2]), at(surface.Xs[column], surface.Ys[row + 1], heights[3]),
            ];
            yield return Shape.Element("path", ("d", Outline(corners) + (heights.Average() < 0 ? Hatch(corners) : "")));
        }
    }

    // Two strokes from edge to edge along y.
    private static string Hatch((double X, double Y)[] corners) => string.Concat(((double[])[1.0 / 3, 2.0 / 3]).Select(share =>
    {
        var (near, far) = (Between(corners[0], corners[1], share), Between(corners[3], corners[2], share));
        return string.Create(CultureInfo.InvariantCulture, $"M{near.X:0.#} {near.Y:0.#}L{far.X:0.#} {far.Y:0.#}");
    }));

    private static (double X, double Y) Between((double X, double Y) one, (double X, double Y) other, double share) =>
        (one.X + (share * (other.X - one.X)), one.Y + (share * (other.Y - one.Y)));

    // Upright edges from the floor to the three corners that are in sight.
    private static IEnumerable<XElement> Posts(PlateSurface surface, Func<double, double, double, (double X, double Y)> at, double low)
    {
        foreach (var (column, row) in new[] { (0, 0), (surface.Xs.Count - 1, 0), (0, surface.Ys.Count - 1) })
        {
            var height = surface.At(column, row);
            if (!double.IsFinite(height))
                continue;
            var (foot, head) = (at(surface.Xs[column], surface.Ys[row], low), at(surface.Xs[column], surface.Ys[row], height));
            yield return Shape.Line(foot.X, foot.Y, head.X, head.Y, Shape.Ink, 0.5);
        }
    }

    private static IEnumerable<XElement> Figures(PlateSurface surface, Func<double, double, double, (double X, double Y)> at, double low, double front)
    {
        var room = new LabelRoom(Width, front + 52);
        foreach (var tick in PlateTicks.Between(surface.Xs[0], surface.Xs[^1], 4))
            foreach (var element in Tick(at(tick, surface.Ys[0], low), 1, PlateTicks.Words(tick), room))
                yield return element;
        foreach (var tick in PlateTicks.Between(surface.Ys[0], surface.Ys[^1], 4))
            foreach (var element in Tick(at(surface.Xs[0], tick, low), -1, PlateTicks.Words(tick), room))
                yield return element;
        var (right, left) = (at((surface.Xs[0] + surface.Xs[^1]) / 2, surface.Ys[0], low), at(surface.Xs[0], (surface.Ys[0] + surface.Ys[^1]) / 2, low));
        yield return Shape.Text("x, mm", right.X + 30, right.Y + 26, Small, 40);
        yield return Shape.Text("y, mm", left.X - 30, left.Y + 26, Small, 40);
    }

    private static XElement[] Tick((double X, double Y) foot, int side, string words, LabelRoom room)
    {
        var mark = Shape.Line(foot.X, foot.Y, foot.X + (side * 3), foot.Y + 3, Shape.Ink, 0.5);
        var (x, y) = (foot.X + (side * 9), foot.Y + 12);
        return room.TryTake(words, x, y, Small) ? [mark, Shape.Text(words, x, y, Small, 40)] : [mark];
    }

    // The scale of heights, beside the plate.
    private static IEnumerable<XElement> Ladder(PlateSurface surface, double lift, double low, double high, double front)
    {
        var room = new LabelRoom(Width, front + 52);
        const double x = 318;
        var foot = Top + (lift * (high - low));
        yield return Shape.Line(x, Top, x, foot, Shape.Ink, 0.75);
        yield return Shape.Text(surface.InMicrometres ? "µm" : "mm", x, Top - 10, Small, 40);
        for (var index = Math.Ceiling((low / surface.Step) - 1e-9); index * surface.Step <= high + (1e-9 * surface.Step); index++)
        {
            var (y, words) = (foot - (lift * ((index * surface.Step) - low)), PlateTicks.Words(index * surface.Step * (surface.InMicrometres ? 1000 : 1)));
            yield return Shape.Line(x, y, x + 4, y, Shape.Ink, 0.75);
            if (room.TryTake(words, x + 6, y + 3.5, AtStart))
                yield return Shape.Text(words, x + 6, y + 3.5, AtStart, 36);
        }
    }

    private static string Outline(ReadOnlySpan<(double X, double Y)> corners)
    {
        var path = new StringBuilder();
        for (var corner = 0; corner < corners.Length; corner++)
            path.Append(corner == 0 ? 'M' : 'L').Append(CultureInfo.InvariantCulture, $"{corners[corner].X:0.#} {corners[corner].Y:0.#}");
        return path.Append('Z').ToString();
    }
}
