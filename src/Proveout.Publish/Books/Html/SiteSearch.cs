using System.Xml.Linq;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Books;

/// <summary>The page that searches the book, in the browser and from a memory stick.</summary>
internal static class SiteSearch
{
    /// <summary>Name of its page.</summary>
    public const string Name = "search.html";

    /// <summary>The page.</summary>
    public static string Write(BuildBook book) => SiteParts.Page(
        book,
        "Search",
        Name,
        [
            Text("h1", "Search"),
            new("noscript", new XElement("p", "The search needs a script. The index does not: ", SiteParts.Link(SiteIndex.Name, "A to Z"), ".")),
            new(
                "form",
                new XAttribute("id", "search"), new XAttribute("role", "search"), new XAttribute("hidden", "hidden"),
                new XElement("label", new XAttribute("for", "words"), "Words that a place has to hold, or how they begin"),
                new XElement("input", new XAttribute("id", "words"), new XAttribute("name", "words"), new XAttribute("type", "search"), new XAttribute("autocomplete", "off"))),
            new("p", new XAttribute("id", "count"), new XAttribute("role", "status"), ""),
            new("ol", new XAttribute("id", "found"), new XAttribute("class", "index"), ""),
        ],
        "search-data.js",
        "search.js");
}
