using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Proveout.Publish.Report;

/// <summary>What stands at the head and foot of every page: a page that goes astray still says what it belongs to.</summary>
internal static class PdfFrame
{
    private const double HeadLine = 40;
    private const double FootLine = 806;
    private const double Right = PdfSheet.Left + PdfSheet.Width;

    /// <summary>Draws both on every page.</summary>
    public static void Draw(PdfDocument document, BookTitle title)
    {
        for (var index = 0; index < document.PageCount; index++)
        {
            using var graphics = XGraphics.FromPdfPage(document.Pages[index], XGraphicsPdfPageOptions.Append);
            var which = PdfWrap.Fit(title.Which, PdfStyle.Note, 180);
            var widthOfWhich = PdfWrap.Width(which, PdfStyle.Note);
            Put(graphics, PdfWrap.Fit(title.Name, PdfStyle.Column, PdfSheet.Width - widthOfWhich - 20), PdfStyle.Column, PdfSheet.Left, HeadLine);
            Put(graphics, which, PdfStyle.Note, Right - widthOfWhich, HeadLine);
            Rule(graphics, HeadLine + 6);

            var page = string.Create(CultureInfo.InvariantCulture, $"Page {index + 1} of {document.PageCount}");
            Rule(graphics, FootLine - 13);
            Put(graphics, PdfWrap.Fit(title.Identity, PdfStyle.Note, PdfSheet.Width - 90), PdfStyle.Note, PdfSheet.Left, FootLine);
            Put(graphics, page, PdfStyle.Note, Right - PdfWrap.Width(page, PdfStyle.Note), FootLine);
        }
    }

    private static void Put(XGraphics graphics, string text, PdfStyle style, double x, double baseLine) =>
        graphics.DrawString(text, style.Font, style.Brush, x, baseLine);

    private static void Rule(XGraphics graphics, double y) => graphics.DrawLine(new XPen(PdfStyle.Rule, 0.6), PdfSheet.Left, y, Right, y);
}
