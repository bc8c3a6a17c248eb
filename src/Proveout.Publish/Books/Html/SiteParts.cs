using System.Reflection;
using System.Xml.Linq;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Books;

/// <summary>What every page of the site has.</summary>
internal static class SiteParts
{
    /// <summary>A page, as HTML that is well-formed XML too.</summary>
    /// <param name="book">The book.</param>
    /// <param name="title">Title of the page.</param>
    /// <param name="name">Name of its file.</param>
    /// <param name="content">What stands in its main part.</param>
    /// <param name="scripts">Scripts that it needs.</param>
    public static string Page(BuildBook book, string title, string name, IEnumerable<XElement> content, params string[] scripts)
    {
        var page = new XElement(
            "html",
            new XAttribute("lang", "en"),
            Head(book, title),
            new XElement(
                "body",
                new XElement("a", new XAttribute("class", "past-head"), new XAttribute("href", "#main"), "To the content"),
                Top(book, name),
                new XElement("main", new XAttribute("id", "main"), content),
                Foot(book),
                scripts.Select(script => new XElement("script", new XAttribute("src", script), ""))));
        return $"<!DOCTYPE html>\n{page.ToString(SaveOptions.DisableFormatting)}\n";
    }

    /// <summary>A link.</summary>
    public static XElement Link(string address, string text, params XAttribute[] attributes) =>
        new("a", new XAttribute("href", address), attributes, PlainText.Clean(text));

    /// <summary>A file that travels inside this library.</summary>
    public static byte[] Resource(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static XElement Head(BuildBook book, string title) => new(
        "head",
        new XElement("meta", new XAttribute("charset", "utf-8")),
        new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
        new XElement("meta", new XAttribute("name", "referrer"), new XAttribute("content", "no-referrer")),
        Text("title", title == book.Title ? title : $"{title} · {book.Title}"),
        new XElement("link", new XAttribute("rel", "stylesheet"), new XAttribute("href", "book.css")));

    private static XElement Top(BuildBook book, string name) => new(
        "header",
        new XAttribute("class", "head"),
        Link(BookSite.FirstPage, book.Machine, new XAttribute("class", "mark")),
        new XElement(
            "nav",
            new XAttribute("aria-label", "Book"),
            new XElement("ul", Tab(BookSite.FirstPage, "Contents", name), Tab(SiteIndex.Name, "A to Z", name), Tab(SiteSearch.Name, "Search", name), Tab(BookSite.Print, "For paper", name))));

    private static XElement Tab(string address, string text, string name) =>
        new("li", address == name ? Link(address, text, new XAttribute("aria-current", "page")) : Link(address, text));

    private static XElement Foot(BuildBook book) => new(
        "footer",
        new XAttribute("class", "foot"),
        Text("p", BuildBook.NotASafetyStatement),
        Text("p", $"Licence: {book.Licence}"),
        Text("p", $"Made with Proveout from the machine file {book.Fingerprint}."));
}
