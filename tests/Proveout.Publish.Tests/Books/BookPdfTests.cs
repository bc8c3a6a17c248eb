using System.Globalization;
using Proveout.Publish.Books;
using Proveout.Publish.Drawings;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace Proveout.Publish.Tests.Books;

/// <summary>The book on paper, read by a library that is not the one that wrote it.</summary>
public sealed class BookPdfTests
{
    private static readonly BuildBook Long = new(
        "Small oven",
        "A box that keeps 60 °C.",
        "",
        "0123456789abcdef",
        "CC0-1.0",
        ["Nobody"],
        [.. Enumerable.Range(1, 60).Select(number => new BookChapter($"chapter-{number}", $"Chapter about thing {number}", "Why.", [new BookTable("Things", [new("Thing"), new("Count")], [.. Enumerable.Range(0, number).Select(row => new[] { $"thing {row}", "1" })])]))],
        []);

    private static PdfDocument Written(BuildBook book)
    {
        using var file = new MemoryStream();
        BookPdf.Write(book, file);
        return PdfDocument.Open(file.ToArray());
    }

    [Fact]
    public void The_contents_give_the_page_on_which_each_chapter_begins()
    {
        using var document = Written(Long);
        var contents = document.GetPages().Where(page => page.Text.Contains("Contents", StringComparison.Ordinal)).ToArray();
        Assert.Equal([2, 3], contents.Select(page => page.Number));

        var lines = contents.SelectMany(page => page.GetWords().GroupBy(word => Math.Round(word.BoundingBox.Bottom)).Select(line => line.OrderBy(word => word.BoundingBox.Left).Select(word => word.Text).ToArray()))
            .Where(line => line is ["Chapter", "about", "thing", _, _])
            .ToArray();
        Assert.Equal(60, lines.Length);
        Assert.All(lines, line =>
        {
            var page = document.GetPage(int.Parse(line[^1], CultureInfo.InvariantCulture));
            Assert.Contains($"Chapter about thing {line[3]}Why.", page.Text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Every_chapter_has_a_bookmark_to_its_page()
    {
        using var document = Written(Long);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        var chapters = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Where(node => node.Title.StartsWith("Chapter", StringComparison.Ordinal)).ToArray();

        Assert.Equal(60, chapters.Length);
        Assert.All(chapters, node => Assert.Contains(node.Title, document.GetPage(node.PageNumber).Text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("pennywort")]
    [InlineData("alderbrook")]
    [InlineData("quarrymoor")]
    public void Every_drawing_of_a_sample_is_painted_with_its_words_in_order_and_low_ones_share_a_page(string sample)
    {
        var design = Samples.Design(sample);
        DrawingSheet[] sheets = [.. SchematicDrawing.Of(design), .. BayDrawing.Of(design), .. design.Parts.SelectMany(part => PartDrawing.Of(design, part.Designation))];

        using var document = Written(Long with { Chapters = [new("drawings", "Drawings", "All.", [.. sheets.Select(sheet => new BookDrawing(sheet, sheet.Title))])] });

        var pageOf = PagesOf(sheets);
        Assert.Equal(3 + pageOf[^1] + 1, document.NumberOfPages);
        Assert.True(pageOf[^1] + 1 < sheets.Length, "No page holds two.");
        Assert.All(sheets.Zip(pageOf), sheet =>
        {
            var page = document.GetPage(4 + sheet.Second);
            var words = System.Xml.Linq.XElement.Parse(sheet.First.Svg).Descendants().Where(element => element.Name.LocalName == "text").Select(text => string.Concat(text.Nodes().OfType<System.Xml.Linq.XText>()));
            Assert.All(words, word => Assert.Contains(Bare(word), Bare(page.Text), StringComparison.Ordinal));
        });
    }

    // A page holds 210 mm of sheets, ISO 216.
    private static int[] PagesOf(DrawingSheet[] sheets)
    {
        var (page, used) = (-1, 210.0);
        return [.. sheets.Select(sheet =>
        {
            (page, used) = used + sheet.HeightMm > 210 ? (page + 1, sheet.HeightMm) : (page, used + sheet.HeightMm);
            return page;
        })];
    }

    [Fact]
    public void Equal_books_are_equal_files()
    {
        using var first = new MemoryStream();
        using var second = new MemoryStream();
        BookPdf.Write(Long, first);
        BookPdf.Write(Long, second);
        Assert.Equal(first.ToArray(), second.ToArray());
    }

    // Letters outside the font are spelt out, and spaces are the reader's guess.
    private static string Bare(string text) => string.Concat(text.Where(char.IsAsciiLetterOrDigit));
}
