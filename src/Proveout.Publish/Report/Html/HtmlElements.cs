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

    /// <summary>A table. A narrow screen shows each row as a card, so roles are said outright and each cell carries its heading.</summary>
    public static XElement Table(string caption, IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<XElement>> rows)
    {
        var head = headings.Select(heading => new XElement("th", Role("columnheader"), new XAttribute("scope", "col"), heading));
        return new(
            "table",
            Role("table"),
            Text("caption", caption),
            new XElement("thead", Role("rowgroup"), new XElement("tr", Role("row"), head)),
            new XElement("tbody", Role("rowgroup"), rows.Select(row => Row(row, headings))));
    }

    private static XElement Row(IReadOnlyList<XElement> cells, IReadOnlyList<string> headings)
    {
        for (var index = 0; index < cells.Count; index++)
            cells[index].Add(Role(cells[index].Name == "th" ? "rowheader" : "cell"), new XAttribute("data-heading", headings[index]));
        return new("tr", Role("row"), cells);
    }

    private static XAttribute Role(string role) => new("role", role);

    /// <summary>A list.</summary>
    public static XElement List(IEnumerable<string> items) => new("ul", items.Select(item => Text("li", item)));

    /// <summary>A list of terms and what they stand for.</summary>
    public static XElement Facts(params IEnumerable<(string Term, string Value)> facts) =>
        new("dl", facts.Select(fact => new XElement("div", Text("dt", fact.Term), Text("dd", ReportWords.OrDash(fact.Value)))));
}
