using PdfSharp.Drawing;
using Proveout.Publish.Drawings;
using Proveout.Publish.Report;

namespace Proveout.Publish.Books;

/// <summary>Writes the pieces of a chapter on paper.</summary>
internal static class PdfBlocks
{
    private const double TallestPhotograph = 330;
    private const double PhotographSpace = 10;

    /// <summary>Writes them in order.</summary>
    public static void Write(PdfSheet sheet, IReadOnlyList<BookBlock> blocks)
    {
        for (var at = 0; at < blocks.Count; at++)
        {
            // Drawings that follow one another share pages.
            DrawingSheet[] drawings = [.. blocks.Skip(at).TakeWhile(block => block is BookDrawing).Cast<BookDrawing>().Select(drawing => drawing.Sheet)];
            if (drawings.Length > 0)
                PdfDrawing.Write(sheet, drawings);
            else
                Write(sheet, blocks[at]);
            at += Math.Max(0, drawings.Length - 1);
        }
    }

    private static void Write(PdfSheet sheet, BookBlock block)
    {
        switch (block)
        {
            case BookHeading heading:
                sheet.Need(90);
                sheet.Space(12);
                sheet.Write(heading.Text, PdfStyle.Heading);
                sheet.Y += 4;
                break;
            case BookText text:
                sheet.Write(text.Text, PdfStyle.Body);
                sheet.Space(5);
                break;
            case BookCautions cautions:
                foreach (var caution in cautions.Cautions)
                    PdfCaution.Write(sheet, caution);
                sheet.Space(4);
                break;
            case BookList list:
                WriteList(sheet, list);
                break;
            case BookTable table:
                WriteTable(sheet, table);
                break;
            case BookPhotograph photograph:
                WritePhotograph(sheet, photograph);
                break;
            case BookCommand command:
                sheet.Write(command.Text, PdfStyle.Strong, indent: 14);
                sheet.Space(5);
                break;
            case BookDownloads downloads:
                WriteList(sheet, new BookList(downloads.Names));
                break;
        }
    }

    private static void WriteList(PdfSheet sheet, BookList list)
    {
        foreach (var (at, item) in list.Items.Index())
        {
            sheet.Need(PdfStyle.Body.LineHeight);
            sheet.DrawLine(new PdfRun(list.IsNumbered ? FormattableString.Invariant($"{at + 1}.") : "•", PdfStyle.Body), PdfSheet.Left);
            sheet.Write(item.Length > 0 ? item : "–", PdfStyle.Body, indent: 18);
            sheet.Space(2);
        }

        sheet.Space(4);
    }

    private static void WriteTable(PdfSheet sheet, BookTable table)
    {
        if (table.Rows.Count == 0)
            sheet.Write("None.", PdfStyle.Body);
        var sum = table.Columns.Sum(column => column.Share);
        PdfColumn[] columns = [.. table.Columns.Select(column => new PdfColumn(column.Heading, PdfSheet.Width * column.Share / sum))];
        new PdfTable(sheet, table.Caption, columns).Write(table.Rows.Select(row => row.Select((cell, at) => PdfCell.Of(ReportWords.OrDash(cell), at == 0 ? PdfStyle.CellStrong : PdfStyle.Cell)).ToArray()));
    }

    private static void WritePhotograph(PdfSheet sheet, BookPhotograph photograph)
    {
        using var image = XImage.FromStream(new MemoryStream(photograph.Picture.Jpeg.ToArray()));
        var scale = Math.Min(PdfSheet.Width / photograph.Picture.Width, TallestPhotograph / photograph.Picture.Height);
        var (width, height) = (photograph.Picture.Width * scale, photograph.Picture.Height * scale);
        sheet.Need(height + PhotographSpace + (2 * PdfStyle.Note.LineHeight));
        sheet.Graphics.DrawImage(image, PdfSheet.Left, sheet.Y + 4, width, height);
        sheet.Y += height + 6;
        sheet.Write(photograph.Caption, PdfStyle.Note);
        sheet.Space(PhotographSpace);
    }
}
