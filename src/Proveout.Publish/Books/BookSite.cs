using System.Text;

namespace Proveout.Publish.Books;

/// <summary>
/// Writes a book as a folder of pages that needs nothing else: no server, no other place, no script but that of the search. Equal books give equal files.
/// </summary>
public static class BookSite
{
    /// <summary>The site's first page.</summary>
    public const string FirstPage = "index.html";

    /// <summary>The same book for paper.</summary>
    public const string Print = "book.pdf";

    /// <summary>All files of the folder, the print among them.</summary>
    public static IReadOnlyList<BookFile> Of(BuildBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        using var print = new MemoryStream();
        BookPdf.Write(book, print);
        return
        [
            Page(FirstPage, SiteFront.Write(book)),
            .. book.Chapters.Select((chapter, at) => Page(NameOf(chapter), SiteChapter.Write(book, at))),
            Page(SiteIndex.Name, SiteIndex.Write(book)),
            Page(SiteSearch.Name, SiteSearch.Write(book)),
            new("search-data.js", "text/javascript", Encoding.UTF8.GetBytes(SearchData.Write(book))),
            new("search.js", "text/javascript", SiteParts.Resource("search.js")),
            new("book.css", "text/css", (byte[])[.. SiteParts.Resource("tokens.css"), .. SiteParts.Resource("book.css")]),
            new(Print, "application/pdf", print.ToArray()),
            .. book.Chapters.SelectMany(chapter => chapter.Blocks).SelectMany(Picture).DistinctBy(file => file.Name),
            .. book.Files,
        ];
    }

    /// <summary>Name of a chapter's page.</summary>
    internal static string NameOf(BookChapter chapter) => $"{chapter.Id}.html";

    private static BookFile Page(string name, string page) => new(name, "text/html", Encoding.UTF8.GetBytes(page));

    private static IEnumerable<BookFile> Picture(BookBlock block) => block switch
    {
        BookDrawing drawing => [new(SiteBlocks.FileOf(drawing), "image/svg+xml", Encoding.UTF8.GetBytes(drawing.Sheet.Svg))],
        BookPhotograph photograph => [new(SiteBlocks.FileOf(photograph), "image/jpeg", photograph.Picture.Jpeg)],
        _ => [],
    };
}
