using PdfSharp.Drawing;

namespace Proveout.Publish.Report;

/// <summary>Writes a table that may go over many pages; its title and headings stand on each of them.</summary>
internal sealed class PdfTable(PdfSheet sheet, string title, IReadOnlyList<PdfColumn> columns)
{
    private const double Padding = 4;
    private const double LeastLines = 3;

    /// <summary>Writes the table.</summary>
    public void Write(IEnumerable<IReadOnlyList<PdfCell>> rows)
    {
        var first = true;
        foreach (var row in rows)
        {
            var cells = row.Select((cell, index) => new PdfCellLines(cell, columns[index].Width - (2 * Padding))).ToList();
            if (first)
                Begin(Height(cells));
            first = false;
            WriteRow(cells);
        }

        sheet.Space(8);
    }

    private static double Height(List<PdfCellLines> cells) => cells.Max(cell => cell.Height) + (2 * Padding);

    /// <summary>The head never stands without a row below it.</summary>
    private void Begin(double rowHeight)
    {
        sheet.Need(HeadHeight(title) + Math.Min(rowHeight, SheetRoom));
        WriteHead(title);
    }

    private void Continue()
    {
        sheet.NewPage();
        WriteHead($"{title} (continued)");
    }

    private double SheetRoom => PdfSheet.FullHeight - HeadHeight($"{title} (continued)");

    private void WriteRow(List<PdfCellLines> cells)
    {
        if (Height(cells) > sheet.Remaining && Height(cells) <= SheetRoom)
            Continue();
        while (Height(cells) > sheet.Remaining)
        {
            if (sheet.Remaining > (2 * Padding) + (LeastLines * PdfStyle.Cell.LineHeight))
                DrawRow(cells.ConvertAll(cell => cell.Take(sheet.Remaining - (2 * Padding))));
            Continue();
        }

        DrawRow(cells);
    }

    private void DrawRow(List<PdfCellLines> cells)
    {
        var top = sheet.Y;
        var height = Height(cells);
        var x = PdfSheet.Left;
        for (var index = 0; index < cells.Count; index++)
        {
            sheet.Y = top + Padding;
            cells[index].Draw(sheet, x + Padding);
            x += columns[index].Width;
        }

        sheet.Y = top + height;
        sheet.Graphics.DrawLine(new XPen(PdfStyle.Rule, 0.6), PdfSheet.Left, sheet.Y, PdfSheet.Left + PdfSheet.Width, sheet.Y);
    }

    private static double HeadHeight(string shown) => TitleHeight(shown) + ColumnsHeight;

    private static double TitleHeight(string shown) =>
        (PdfWrap.Lines([new PdfRun(shown, PdfStyle.SubHeading)], PdfSheet.Width).Count * PdfStyle.SubHeading.LineHeight) + 3;

    private static double ColumnsHeight => PdfStyle.Column.LineHeight + (2 * Padding);

    private void WriteHead(string shown)
    {
        sheet.Write(shown, PdfStyle.SubHeading);
        sheet.Y += 3;
        sheet.Graphics.DrawRectangle(new XSolidBrush(PdfStyle.Band), PdfSheet.Left, sheet.Y, PdfSheet.Width, ColumnsHeight);
        var (top, x) = (sheet.Y, PdfSheet.Left);
        sheet.Y = top + Padding;
        foreach (var column in columns)
        {
            sheet.DrawLine(new PdfRun(column.Heading, PdfStyle.Column), x + Padding);
            x += column.Width;
        }

        sheet.Y = top + ColumnsHeight;
    }
}
