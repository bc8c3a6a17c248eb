using System.Xml.Linq;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Books;

/// <summary>The first page: title, licence, credits, contents.</summary>
internal static class SiteFront
{
    /// <summary>The page.</summary>
    public static string Write(BuildBook book) => SiteParts.Page(book, book.Title, BookSite.FirstPage,
    [
        Classed("p", "eyebrow", "Build book"),
        Text("h1", book.Which.Length > 0 ? $"{book.Machine}, {book.Which}" : book.Machine),
        .. book.Summary.Length > 0 ? [Classed("p", "lead", PlainText.Clean(book.Summary))] : Array.Empty<XElement>(),
        new(
            "section",
            new XAttribute("class", "cautions"), new XAttribute("aria-label", "Caution"),
            Text("p", BuildBook.NotASafetyStatement)),
        Contents(book),
        Section("licence", "Licence", Text("p", book.Licence)),
        Section("credits", "Credits", List(book.Credits)),
    ]);

    private static XElement Contents(BuildBook book) => new(
        "nav",
        new XAttribute("aria-labelledby", "contents"),
        new XElement("h2", new XAttribute("id", "contents"), "Contents"),
        new XElement("ol", new XAttribute("class", "contents"), book.Chapters.Select(chapter => new XElement(
            "li",
            SiteParts.Link(BookSite.NameOf(chapter), chapter.Title),
            Classed("span", "quiet", PlainText.Clean(chapter.Purpose))))));
}
