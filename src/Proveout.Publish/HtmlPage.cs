using System.Reflection;
using System.Xml.Linq;
using Proveout.Publish.Report;

namespace Proveout.Publish;

/// <summary>One web page that needs nothing else: no script, no font, no other file. Well-formed XML as well as HTML.</summary>
internal static class HtmlPage
{
    /// <summary>The page. Equal input gives equal output.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="content">What stands in its main part.</param>
    public static string Write(string title, params IEnumerable<XElement> content)
    {
        var page = new XElement("html", new XAttribute("lang", "en"), Head(title), new XElement("body", new XElement("main", content)));
        return $"<!DOCTYPE html>\n{page.ToString(SaveOptions.DisableFormatting)}\n";
    }

    private static XElement Head(string title) => new(
        "head",
        new XElement("meta", new XAttribute("charset", "utf-8")),
        new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
        HtmlElements.Text("title", title),
        new XElement("style", Style()));

    /// <summary>The style sheet; it holds none of the characters that XML would have to escape.</summary>
    private static string Style()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("report.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
