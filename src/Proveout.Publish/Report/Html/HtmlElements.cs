using System.Xml.Linq;

namespace Proveout.Publish.Report;

/// <summary>Makes HTML elements through the XML library, so that no text can be read as markup. The result is XML and HTML at once.</summary>
internal static class HtmlElements
{
    /// <summary>An element with text.</summary>
    public static XElement Text(string name, string text) => new(name, new XText(PlainText.Clean(text)));

    /// <summary>An element with a class.</summary>
    public static XElement Classed(string name, string cssClass, params object[] content) => new(name, new XAttribute("class", cssClass), content);

    /// <summary>A section with a heading that it is named by.</summary>
    public static XElement Section(string id, string heading, params IEnumerable<XElement> content) =>
        new("section", new XAttribute("aria-labelledby", id), new XElement("h2", new XAttribute("id", id), heading), content);

    /// <summary>A table in a box that scrolls by itself where the screen is narrow.</summary>
    public static XElement Table(string caption, IEnumerable<string> headings, IEnumerable<XElement> rows)
    {
        var head = headings.Select(heading => new XElement("th", new XAttribute("scope", "col"), heading));
        var table = new XElement("table", Text("caption", caption), new XElement("thead", new XElement("tr", head)), new XElement("tbody", rows));
        return new XElement(
            "div",
            new XAttribute("class", "scroll"), new XAttribute("role", "region"), new XAttribute("tabindex", "0"),
            new XAttribute("aria-label", PlainText.Clean(caption)), table);
    }

    /// <summary>A list.</summary>
    public static XElement List(IEnumerable<string> items) => new("ul", items.Select(item => Text("li", item)));

    /// <summary>A list of terms and what they stand for.</summary>
    public static XElement Facts(params IEnumerable<(string Term, string Value)> facts) =>
        new("dl", facts.Select(fact => new XElement("div", Text("dt", fact.Term), Text("dd", ReportWords.OrDash(fact.Value)))));
}
