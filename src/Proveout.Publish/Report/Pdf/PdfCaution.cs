using PdfSharp.Drawing;

namespace Proveout.Publish.Report;

/// <summary>Writes a caution with a triangle before it, as ISO 3864-1 draws warnings.</summary>
internal static class PdfCaution
{
    /// <summary>Writes it as a paragraph.</summary>
    public static void Write(PdfSheet sheet, string caution)
    {
        sheet.Need(PdfStyle.Body.LineHeight);
        var (x, y) = (PdfSheet.Left, sheet.Y);
        sheet.Graphics.DrawPolygon(
            new XPen(PdfStyle.Ink, 1) { LineJoin = XLineJoin.Round }, new XSolidBrush(XColor.FromArgb(0xff, 0xc9, 0x2e)),
            [new(x + 5.5, y + 1.5), new(x + 11, y + 10.5), new(x, y + 10.5)], XFillMode.Winding);
        sheet.Graphics.DrawLine(new XPen(PdfStyle.Ink, 1.1), x + 5.5, y + 4.6, x + 5.5, y + 7.6);
        sheet.Graphics.DrawLine(new XPen(PdfStyle.Ink, 1.1), x + 5.5, y + 8.5, x + 5.5, y + 9.5);
        sheet.Write(caution, PdfStyle.Body, indent: 18);
        sheet.Space(2);
    }
}
