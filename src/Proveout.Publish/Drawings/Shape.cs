using System.Globalization;
using System.Xml.Linq;

namespace Proveout.Publish.Drawings;

/// <summary>
/// Makes SVG elements (W3C SVG 2). Text goes in through the XML library, so that none of it can be read as markup. Colours are attributes and
/// not styles, so that they hold in a page whose policy forbids styles of its own.
/// </summary>
internal static class Shape
{
    /// <summary>Colour of the red lead.</summary>
    public const string Red = "var(--drawing-red, #c62828)";

    /// <summary>Colour of the black lead; its edge is drawn in the ink, so that it shows on a dark page too.</summary>
    public const string Black = "var(--drawing-black, #16181d)";

    /// <summary>Whatever colour the surrounding text has.</summary>
    public const string Ink = "currentColor";

    private static readonly XNamespace Names = "http://www.w3.org/2000/svg";

    /// <summary>An element with attributes given as name and value in turn.</summary>
    public static XElement Element(string name, params (string Name, object Value)[] attributes) =>
        new(Names + name, attributes.Select(attribute => new XAttribute(attribute.Name, Number(attribute.Value))));

    /// <summary>A group that can be dimmed.</summary>
    public static XElement Group(bool dimmed, params IEnumerable<XElement> children)
    {
        var group = dimmed ? Element("g", ("opacity", 0.62)) : Element("g");
        group.Add(children);
        return group;
    }

    /// <summary>A text alternative for the element that it stands in.</summary>
    public static XElement Title(string text) => new(Names + "title", PlainText.Clean(text));

    /// <summary>A straight line.</summary>
    public static XElement Line(double x1, double y1, double x2, double y2, string colour, double width) =>
        Element("line", ("x1", x1), ("y1", y1), ("x2", x2), ("y2", y2), ("stroke", colour), ("stroke-width", width), ("stroke-linecap", "round"));

    /// <summary>A path.</summary>
    public static XElement Path(string data, string fill, string stroke, double width) =>
        Element("path", ("d", data), ("fill", fill), ("stroke", stroke), ("stroke-width", width));

    /// <summary>A rectangle with rounded corners.</summary>
    public static XElement Box(double x, double y, double width, double height, double radius, string fill, string stroke, double line) =>
        Element(
            "rect",
            ("x", x), ("y", y), ("width", width), ("height", height), ("rx", radius),
            ("fill", fill), ("stroke", stroke), ("stroke-width", line));

    /// <summary>A circle.</summary>
    public static XElement Circle(double x, double y, double radius, string fill, string stroke, double line) =>
        Element("circle", ("cx", x), ("cy", y), ("r", radius), ("fill", fill), ("stroke", stroke), ("stroke-width", line));

    /// <summary>A line of text that takes no more than a width; its whole text is its title when it had to be shortened.</summary>
    public static XElement Text(string text, double x, double y, TextStyle style, double width)
    {
        var whole = PlainText.Clean(text);
        var shown = style.Fit(whole, width);
        var element = Element(
            "text",
            ("x", x), ("y", y), ("font-size", style.Size), ("text-anchor", style.Anchor), ("fill", style.Colour));
        if (style.Bold)
            element.Add(new XAttribute("font-weight", "bold"));
        if (shown != whole)
            element.Add(Title(whole));
        element.Add(new XText(shown));
        return element;
    }

    private static object Number(object value) =>
        value is double number ? Math.Round(number, 2).ToString(CultureInfo.InvariantCulture) : value;
}
