using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using PdfSharp.Drawing;
using Proveout.Engine.Faults;
using Proveout.Engine.Machine;
using Proveout.Publish.Drawings;
using Proveout.Publish.Report;

namespace Proveout.Publish.Tests.Drawings;

/// <summary>Reads a drawing back with a strict XML reader, and measures its words with a real font.</summary>
internal sealed class SvgReading
{
    public static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Measures with the fonts that the report brings along; writing one makes them known.</summary>
    private static readonly ThreadLocal<XGraphics> Ruler = new(() =>
    {
        PdfReport.Write(SampleReport.Small, Stream.Null);
        return XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    });

    private SvgReading(string text)
    {
        using var reader = XmlReader.Create(new StringReader(text), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        Root = XElement.Load(reader);
    }

    public XElement Root { get; }

    public string Title => Root.Element(Svg + "title")!.Value;

    public string Description => Root.Element(Svg + "desc")!.Value;

    /// <summary>Words as shown, without the titles of those that were shortened.</summary>
    public IEnumerable<string> Words => Root.Descendants(Svg + "text").Select(Shown);

    public static SvgReading Of(DrawingSheet sheet) => new(sheet.Svg);

    public static SvgReading Of(MachineDesign design, params CheckPoint[] points) => Of(design, SampleDesign.MakeCheck(points));

    public static SvgReading Of(MachineDesign design, Check check) => new(ProbeDrawing.Svg(design, check));

    /// <summary>Where each line of text stands: from left, right, upper and lower edge.</summary>
    public IReadOnlyList<(string Text, XRect Box)> Boxes() => Root.Descendants(Svg + "text").Select(element =>
    {
        var size = Number(element, "font-size");
        var width = RealWidth(Shown(element), size, element.Attribute("font-weight") is not null);
        var left = Number(element, "x") - (element.Attribute("text-anchor")!.Value switch { "middle" => width / 2, "end" => width, _ => 0 });
        var box = new XRect(left, Number(element, "y") - (0.75 * size), width, 0.95 * size);
        return (Shown(element), element.Attribute("transform") is null ? box : Turned(box, Number(element, "x"), Number(element, "y")));
    }).ToList();

    /// <summary>The lines of each conductor, stretch by stretch, each from point to point.</summary>
    public ILookup<string, IReadOnlyList<XPoint>> Wires() => Root.Descendants(Svg + "path")
        .Where(path => path.Attribute("data-conductor") is not null)
        .ToLookup(path => path.Attribute("data-conductor")!.Value, path => Points(path.Attribute("d")!.Value));

    public XRect ViewBox()
    {
        var numbers = Root.Attribute("viewBox")!.Value.Split(' ').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToList();
        return new(numbers[0], numbers[1], numbers[2], numbers[3]);
    }

    private static IReadOnlyList<XPoint> Points(string data) => data[1..].Split(" L")
        .Select(point => point.Split(' ').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToList())
        .Select(point => new XPoint(point[0], point[1]))
        .ToList();

    // A quarter turn to the left about the point that the text is placed at.
    private static XRect Turned(XRect box, double x, double y) => new(x + (box.Top - y), y - (box.Right - x), box.Height, box.Width);

    private static string Shown(XElement text) => string.Concat(text.Nodes().OfType<XText>().Select(node => node.Value));

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    /// <summary>Width in DejaVu Sans, among the widest fonts that systems show as their own; its condensed cut is 0.9 as wide (from its design).</summary>
    private static double RealWidth(string text, double size, bool bold)
    {
        return Ruler.Value!.MeasureString(text, new XFont("DejaVu Sans Condensed", size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular)).Width / 0.9;
    }
}
