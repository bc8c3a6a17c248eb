using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>A plate's lines of equal height and its surface side by side on one sheet.</summary>
public static class PlateSheet
{
    /// <summary>The sheet.</summary>
    public static DrawingSheet Of(PlateView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        const double half = (Paper.Width - 30) / 2;
        return Paper.Sheet(
            view.Name,
            view.Title,
            $"Left: lines of equal height. Right: the surface. {view.Words}",
            ("Plate", $"{view.Scale} Crosses: where it was probed."),
            "",
            [Placed(ContourDrawing.Element(view), 12, half), Placed(SurfaceDrawing.Element(view), 18 + half, half)]);
    }

    private static XElement Placed(XElement drawing, double left, double width)
    {
        foreach (var (name, value) in new[] { ("x", left), ("y", Paper.Top), ("width", width), ("height", Paper.Bottom - Paper.Top) })
            drawing.SetAttributeValue(name, value.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture));
        drawing.SetAttributeValue("preserveAspectRatio", "xMidYMin meet");
        return drawing;
    }
}
