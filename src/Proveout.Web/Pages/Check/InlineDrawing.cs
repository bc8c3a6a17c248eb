using System.Xml;
using System.Xml.Linq;

namespace Proveout.Web.Pages.Check;

/// <summary>Makes an SVG document fit to stand inside a page whose policy forbids styles and scripts of its own.</summary>
internal static class InlineDrawing
{
    private static readonly HashSet<string> Forbidden = new(StringComparer.OrdinalIgnoreCase)
    {
        "script", "style", "foreignObject", "a", "image", "iframe", "animate", "set",
    };

    private static readonly HashSet<string> Paint = new(StringComparer.Ordinal)
    {
        "fill", "stroke", "stroke-width", "stroke-dasharray", "opacity", "font-family", "font-size", "font-weight", "text-anchor",
    };

    /// <summary>The drawing as markup; empty when the document cannot be read.</summary>
    public static string From(string? document)
    {
        if (document is null)
            return "";
        try
        {
            var drawing = XElement.Parse(document);
            Clean(drawing);
            return drawing.ToString(SaveOptions.DisableFormatting);
        }
        catch (XmlException)
        {
            return "";
        }
    }

    private static void Clean(XElement drawing)
    {
        drawing.Descendants().Where(element => Forbidden.Contains(element.Name.LocalName)).Remove();
        foreach (var element in drawing.DescendantsAndSelf())
        {
            element.Attributes().Where(MayAct).Remove();
            SpellOutStyle(element);
        }
    }

    private static bool MayAct(XAttribute attribute) =>
        attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
        || (attribute.Name.LocalName == "href" && !attribute.Value.StartsWith('#'));

    // A style attribute would be ignored under the policy; the same declarations as presentation attributes are not (SVG 2, 6.6).
    // Its size is left to the page's stylesheet.
    private static void SpellOutStyle(XElement element)
    {
        if (element.Attribute("style") is not { } style)
            return;
        style.Remove();
        foreach (var declaration in style.Value.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = declaration.Split(':', 2, StringSplitOptions.TrimEntries);
            if (parts.Length == 2 && Paint.Contains(parts[0]))
                element.SetAttributeValue(parts[0], parts[1]);
        }
    }
}
