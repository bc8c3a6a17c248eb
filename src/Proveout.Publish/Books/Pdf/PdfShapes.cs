using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using PdfSharp.Drawing;
using Proveout.Publish.Report;

namespace Proveout.Publish.Books;

/// <summary>
/// Paints the elements of SVG that our own drawings are made of, in the colours that they have on white paper. It is no reader of foreign drawings:
/// of an element that none of ours has it says so, and a test paints every drawing of every sample.
/// </summary>
/// <param name="graphics">Paints; one unit is a millimetre of the drawing.</param>
internal sealed partial class PdfShapes(XGraphics graphics)
{
    /// <summary>Paints an element and what is in it.</summary>
    /// <exception cref="NotSupportedException">No drawing of ours has such an element.</exception>
    public void Paint(XElement element)
    {
        var state = graphics.Save();
        Move((string?)element.Attribute("transform") ?? "");
        switch (element.Name.LocalName)
        {
            case "g":
                foreach (var child in element.Elements())
                    Paint(child);
                break;
            case "line":
                graphics.DrawLine(PenOf(element)!, Number(element, "x1"), Number(element, "y1"), Number(element, "x2"), Number(element, "y2"));
                break;
            case "rect":
                PaintBox(element);
                break;
            case "circle":
                var radius = Number(element, "r");
                Painted(element, (pen, brush) => graphics.DrawEllipse(pen, brush, Number(element, "cx") - radius, Number(element, "cy") - radius, 2 * radius, 2 * radius));
                break;
            case "path":
                foreach (var stretch in new PdfPath((string)element.Attribute("d")!).Read())
                    Painted(element, (pen, brush) => graphics.DrawPath(pen, brush, stretch));
                break;
            case "text":
                PaintText(element);
                break;
            case "title" or "desc" or "style" or "defs" or "pattern":
                break;
            default:
                throw new NotSupportedException($"No drawing of ours has the element {element.Name.LocalName}.");
        }

        graphics.Restore(state);
    }

    private void Move(string transform)
    {
        foreach (Match move in Moves().Matches(transform))
        {
            double[] numbers = [.. move.Groups[2].Value.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
            if (move.Groups[1].Value == "translate")
                graphics.TranslateTransform(numbers[0], numbers.ElementAtOrDefault(1));
            else if (numbers.Length == 3)
                graphics.RotateAtTransform(numbers[0], new XPoint(numbers[1], numbers[2]));
            else
                graphics.RotateTransform(numbers[0]);
        }
    }

    private void PaintBox(XElement element)
    {
        var box = new XRect(Number(element, "x"), Number(element, "y"), Number(element, "width"), Number(element, "height"));
        var corner = 2 * Number(element, "rx");
        if (corner > 0)
            Painted(element, (pen, brush) => graphics.DrawRoundedRectangle(pen, brush, box.X, box.Y, box.Width, box.Height, corner, corner));
        else
            Painted(element, (pen, brush) => graphics.DrawRectangle(pen, brush, box));
    }

    private void PaintText(XElement element)
    {
        var words = FontCoverage.Spell(string.Concat(element.Nodes().OfType<XText>().Select(text => text.Value)));
        if (words.Length == 0 || BrushOf(element) is not { } brush)
            return;
        var font = ReportFonts.Make(Number(element, "font-size"), (string?)element.Attribute("font-weight") == "bold");
        var width = graphics.MeasureString(words, font).Width;
        var left = (string?)element.Attribute("text-anchor") switch { "middle" => width / 2, "end" => width, _ => 0 };
        graphics.DrawString(words, font, brush, Number(element, "x") - left, Number(element, "y"));
    }

    private static void Painted(XElement element, Action<XPen?, XBrush?> paint)
    {
        var (pen, brush) = (PenOf(element), BrushOf(element));
        if (pen is not null || brush is not null)
            paint(pen, brush);
    }

    private static XPen? PenOf(XElement element)
    {
        if (Colour((string?)element.Attribute("stroke") ?? "none", 1) is not { } colour || Number(element, "stroke-width") <= 0)
            return null;
        var pen = new XPen(colour, Number(element, "stroke-width")) { LineJoin = XLineJoin.Round, LineCap = (string?)element.Attribute("stroke-linecap") == "round" ? XLineCap.Round : XLineCap.Flat };
        // The library counts dashes in widths of the line, SVG in units of the drawing.
        if ((string?)element.Attribute("stroke-dasharray") is { } dashes)
            pen.DashPattern = [.. dashes.Split(' ').Select(dash => double.Parse(dash, CultureInfo.InvariantCulture) / pen.Width)];
        return pen;
    }

    private static XSolidBrush? BrushOf(XElement element) =>
        Colour((string?)element.Attribute("fill") ?? "none", element.Attribute("fill-opacity") is { } opacity ? double.Parse(opacity.Value, CultureInfo.InvariantCulture) : 1) is { } colour ? new(colour) : null;

    // On white paper: the ink is black, and what a pattern fills stays empty between its lines.
    private static XColor? Colour(string words, double opacity)
    {
        if (words is "none" || words.StartsWith("url(", StringComparison.Ordinal))
            return null;
        var code = Code().Match(words);
        var number = code.Success ? int.Parse(code.Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture) : 0x16181d;
        return XColor.FromArgb((int)Math.Round(255 * opacity), (number >> 16) & 255, (number >> 8) & 255, number & 255);
    }

    private static double Number(XElement element, string name) =>
        element.Attribute(name) is { } attribute ? double.Parse(attribute.Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"(translate|rotate)\(([^)]*)\)")]
    private static partial Regex Moves();

    [GeneratedRegex("(?<=#)[0-9a-fA-F]{6}")]
    private static partial Regex Code();
}
