using System.Xml.Linq;
using static Proveout.Publish.Report.HtmlElements;

namespace Proveout.Publish.Books;

/// <summary>The page of a chapter.</summary>
internal static class SiteChapter
{
    /// <summary>The page.</summary>
    /// <param name="book">The book.</param>
    /// <param name="at">Place of the chapter, from 0.</param>
    public static string Write(BuildBook book, int at)
    {
        var chapter = book.Chapters[at];
        return SiteParts.Page(book, chapter.Title, BookSite.NameOf(chapter),
        [
            Classed("p", "eyebrow", FormattableString.Invariant($"Chapter {at + 1} of {book.Chapters.Count}")),
            Text("h1", chapter.Title),
            Classed("p", "lead", PlainText.Clean(chapter.Purpose)),
            .. new SiteBlocks(chapter).All(),
            Turn(book, at),
        ]);
    }

    private static XElement Turn(BuildBook book, int at) => new(
        "nav",
        new XAttribute("class", "turn"), new XAttribute("aria-label", "Chapters beside this one"),
        new XElement(
            "ul",
            at > 0 ? Beside("Before", book.Chapters[at - 1], "prev") : null,
            at < book.Chapters.Count - 1 ? Beside("Next", book.Chapters[at + 1], "next") : Home()));

    private static XElement Beside(string word, BookChapter chapter, string relation) =>
        new("li", SiteParts.Link(BookSite.NameOf(chapter), $"{word}: {chapter.Title}", new XAttribute("rel", relation)));

    private static XElement Home() => new("li", SiteParts.Link(BookSite.FirstPage, "To the contents"));
}
