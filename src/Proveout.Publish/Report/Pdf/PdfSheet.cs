using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Proveout.Publish.Report;

/// <summary>The page being written, and where on it writing goes on. Lengths in points; A4 upright, ISO 216.</summary>
internal sealed class PdfSheet : IDisposable
{
    /// <summary>Left edge of the text.</summary>
    public const double Left = 45;

    /// <summary>Width of the text.</summary>
    public const double Width = 505;

    private const double PageTop = 62;
    private const double PageBottom = 780;
    private readonly PdfDocument _document;

    /// <summary>Starts the first page of a document.</summary>
    public PdfSheet(PdfDocument document)
    {
        _document = document;
        Graphics = NewGraphics();
    }

    /// <summary>Height that a fresh page offers.</summary>
    public static double FullHeight => PageBottom - PageTop;

    /// <summary>Draws on the current page.</summary>
    public XGraphics Graphics { get; private set; }

    /// <summary>Where writing goes on.</summary>
    public double Y { get; set; } = PageTop;

    /// <summary>Height left on the page.</summary>
    public double Remaining => PageBottom - Y;

    /// <summary>Goes on to a new page.</summary>
    public void NewPage()
    {
        Graphics.Dispose();
        Graphics = NewGraphics();
        Y = PageTop;
    }

    /// <summary>Goes on to a new page unless a height is left on this one.</summary>
    public void Need(double height)
    {
        if (height > Remaining)
            NewPage();
    }

    /// <summary>Leaves a space, unless the page has just begun.</summary>
    public void Space(double height) => Y += Y > PageTop ? height : 0;

    /// <summary>Adds a bookmark to the current page.</summary>
    public void Bookmark(string title) => _document.Outlines.Add(PlainText.Clean(title), _document.Pages[^1], opened: true);

    /// <summary>Writes a paragraph, going on to new pages as it needs.</summary>
    public void Write(string text, PdfStyle style, double indent = 0)
    {
        foreach (var line in PdfWrap.Lines([new PdfRun(text, style)], Width - indent))
        {
            Need(style.LineHeight);
            DrawLine(line, Left + indent);
            Y += style.LineHeight;
        }
    }

    /// <summary>Draws a line of text at the current height.</summary>
    public void DrawLine(PdfRun line, double x) => Graphics.DrawString(line.Text, line.Style.Font, line.Style.Brush, x, Y + line.Style.Ascent);

    /// <inheritdoc/>
    public void Dispose() => Graphics.Dispose();

    private XGraphics NewGraphics()
    {
        var page = _document.AddPage();
        page.Size = PageSize.A4;
        return XGraphics.FromPdfPage(page);
    }
}
