using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Proveout.Publish.Report;

namespace Proveout.Publish.Schedules;

/// <summary>Writes labels as a PDF on A4.</summary>
public static class PdfLabels
{
    private const double PointsInMm = 72 / 25.4;
    private static readonly PdfStyle Name = new(11, true, PdfStyle.Ink);
    private static readonly PdfStyle End = new(8, true, PdfStyle.Ink);
    private static readonly PdfStyle Beside = new(6.5, false, PdfStyle.Soft);

    /// <summary>Writes the document and leaves the stream open. Equal input gives equal bytes.</summary>
    /// <param name="book">The schedules whose labels to write.</param>
    /// <param name="written">Moment that the document bears.</param>
    /// <param name="destination">Where to.</param>
    public static void Write(ScheduleBook book, DateTimeOffset written, Stream destination) => PdfBook.Write(
        new BookTitle($"{book.Machine}: labels", "", "", "", "", written),
        destination,
        document =>
        {
            foreach (var labels in LabelSheet.Sheets(book.Labels))
                WriteSheet(document, labels);
            if (book.Labels.Count == 0)
                document.AddPage();
        });

    private static void WriteSheet(PdfDocument document, WireLabel[] labels)
    {
        var page = document.AddPage();
        page.Size = PdfSharp.PageSize.A4;
        using var graphics = XGraphics.FromPdfPage(page);
        foreach (var (number, label) in labels.Index())
        {
            var (left, top) = LabelSheet.CornerOf(number);
            WriteLabel(graphics, label, left * PointsInMm, top * PointsInMm);
        }
    }

    private static void WriteLabel(XGraphics graphics, WireLabel label, double left, double top)
    {
        graphics.DrawRectangle(new XPen(PdfStyle.Rule, 0.3), left, top, LabelSheet.WidthMm * PointsInMm, LabelSheet.HeightMm * PointsInMm);
        WriteCode(graphics, label.Code, left + PointsInMm, top + PointsInMm);
        var x = left + ((LabelSheet.CodeMm + 2.5) * PointsInMm);
        var width = (LabelSheet.WidthMm - LabelSheet.CodeMm - 3.5) * PointsInMm;
        var y = top + (1.2 * PointsInMm);
        foreach (var (text, style) in new[] { (label.Conductor, Name), (label.Here, End), ($"to {label.There}", Beside), (label.Wire, Beside) })
        {
            graphics.DrawString(PdfWrap.Fit(text, style, width), style.Font, style.Brush, x, y + style.Ascent);
            y += style.LineHeight;
        }
    }

    private static void WriteCode(XGraphics graphics, string text, double left, double top)
    {
        var modules = SquareCode.Of(text);
        var size = LabelSheet.CodeMm * PointsInMm / modules.Length;
        foreach (var (row, cells) in modules.Index())
            foreach (var (first, length) in Runs(cells))
                graphics.DrawRectangle(XBrushes.Black, left + (first * size), top + (row * size), length * size, size);
    }

    internal static IEnumerable<(int First, int Length)> Runs(bool[] cells)
    {
        for (var at = 0; at < cells.Length; at++)
            if (cells[at])
            {
                var first = at;
                while (at < cells.Length && cells[at])
                    at++;
                yield return (first, at - first);
            }
    }
}
