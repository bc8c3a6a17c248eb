using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Proveout.Publish.Report;

namespace Proveout.Publish.Books;

/// <summary>The list of contents: its pages are put in before the chapters and filled when their page numbers are known.</summary>
internal sealed class PdfContents
{
    private const double Top = 96;
    private const double NumberWidth = 40;
    private const int LinesAPage = 42;
    private static readonly double Pitch = PdfStyle.Body.LineHeight + 3;
    private readonly IReadOnlyList<string> _titles;
    private readonly int _first;
    private readonly List<int> _pages = [];

    private PdfContents(IReadOnlyList<string> titles, int first) => (_titles, _first) = (titles, first);

    /// <summary>Puts empty pages in, with their heading.</summary>
    /// <param name="sheet">Writes pages.</param>
    /// <param name="document">The document.</param>
    /// <param name="titles">The chapters.</param>
    public static PdfContents Reserve(PdfSheet sheet, PdfDocument document, IReadOnlyList<string> titles)
    {
        var first = document.PageCount;
        for (var line = 0; line == 0 || line < titles.Count; line += LinesAPage)
        {
            sheet.NewPage();
            if (line == 0)
                sheet.Bookmark("Contents");
            sheet.Write(line == 0 ? "Contents" : "Contents (continued)", PdfStyle.Heading);
        }

        return new(titles, first);
    }

    /// <summary>The next chapter begins on a page, counted from 1.</summary>
    public void Add(int page) => _pages.Add(page);

    /// <summary>Writes titles and page numbers, each line a link.</summary>
    public void Fill(PdfDocument document)
    {
        foreach (var lines in _titles.Zip(_pages).Chunk(LinesAPage).Index())
        {
            var page = document.Pages[_first + lines.Index];
            using var graphics = XGraphics.FromPdfPage(page, XGraphicsPdfPageOptions.Append);
            foreach (var (at, (title, number)) in lines.Item.Index())
                Line(graphics, page, Top + (at * Pitch), title, number);
        }
    }

    private static void Line(XGraphics graphics, PdfPage page, double y, string title, int number)
    {
        var words = number.ToString(CultureInfo.InvariantCulture);
        var right = PdfSheet.Left + PdfSheet.Width;
        Put(PdfWrap.Fit(title, PdfStyle.Body, PdfSheet.Width - NumberWidth), PdfSheet.Left);
        Put(words, right - PdfWrap.Width(words, PdfStyle.Body));
        graphics.DrawLine(new XPen(PdfStyle.Rule, 0.4), PdfSheet.Left, y + Pitch - 2, right, y + Pitch - 2);
        // A link's place is counted from the lower edge of the page (ISO 32000-1, 12.5.2).
        var area = graphics.Transformer.WorldToDefaultPage(new XRect(PdfSheet.Left, y, PdfSheet.Width, Pitch));
        var link = page.AddDocumentLink(new PdfRectangle(area), number);
        // Its name is drawn at random and its date is of now; neither is asked for (ISO 32000-1, table 164).
        link.Elements.Remove("/NM");
        link.Elements.Remove("/M");

        void Put(string text, double x) => graphics.DrawString(text, PdfStyle.Body.Font, PdfStyle.Body.Brush, x, y + PdfStyle.Body.Ascent);
    }
}
