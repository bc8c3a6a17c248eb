using Proveout.Publish.Report;

namespace Proveout.Publish.Schedules;

/// <summary>Writes schedules as a PDF on A4 with its fonts inside.</summary>
public static class PdfSchedules
{
    // Points beside a word: the padding of a cell on both sides, and a little air at the edge of the sheet.
    private const double RoomBeside = 12;

    /// <summary>Writes the document and leaves the stream open. Equal input gives equal bytes.</summary>
    /// <param name="book">The schedules.</param>
    /// <param name="written">Moment that the document bears.</param>
    /// <param name="destination">Where to.</param>
    public static void Write(ScheduleBook book, DateTimeOffset written, Stream destination) => PdfBook.Write(
        new BookTitle($"{book.Machine}: {book.Kind.ToLowerInvariant()}", book.Machine, book.Kind, "", $"Machine file {book.Fingerprint}", written),
        destination,
        document =>
        {
            using var sheet = new PdfSheet(document);
            WriteHead(sheet, book);
            foreach (var schedule in book.Schedules)
                WriteSchedule(sheet, schedule);
        });

    private static void WriteHead(PdfSheet sheet, ScheduleBook book)
    {
        sheet.Write(book.Kind, PdfStyle.Note);
        sheet.Write(book.Machine, PdfStyle.Title);
        sheet.Write(book.Summary, PdfStyle.Body);
        sheet.Space(8);
        foreach (var caution in book.Cautions)
            PdfCaution.Write(sheet, caution);
    }

    private static void WriteSchedule(PdfSheet sheet, Schedule schedule)
    {
        if (sheet.Remaining < PdfSheet.FullHeight / 4)
            sheet.NewPage();
        sheet.Space(14);
        sheet.Bookmark(schedule.Title);
        sheet.Write(schedule.Title, PdfStyle.Heading);
        sheet.Write(schedule.Purpose, PdfStyle.Body);
        if (schedule.Total.Length > 0)
            sheet.Write(schedule.Total, PdfStyle.Strong);
        sheet.Space(4);
        foreach (var caution in schedule.Cautions)
            PdfCaution.Write(sheet, caution);
        if (schedule.Rows.Count == 0)
            sheet.Write("None.", PdfStyle.Body);
        new PdfTable(sheet, schedule.Title, ColumnsOf(schedule)).Write(schedule.Rows.Select(RowOf));
    }

    private static PdfColumn[] ColumnsOf(Schedule schedule)
    {
        double[] floors = [.. schedule.Columns.Select((column, at) => Floor(column, at, schedule.Rows))];
        var widths = ColumnWidths.Of([.. schedule.Columns.Select(column => column.Share)], floors, PdfSheet.Width);
        return [.. schedule.Columns.Zip(widths, (column, width) => new PdfColumn(column.Heading, width))];
    }

    // Its heading and its longest word stand whole, with room beside them.
    private static double Floor(ScheduleColumn column, int at, IReadOnlyList<IReadOnlyList<string>> rows) =>
        Math.Max(PdfWrap.Width(column.Heading, PdfStyle.Column), rows.Select(row => PdfWrap.LongestWord(row[at], StyleOf(at))).DefaultIfEmpty(0).Max()) + RoomBeside;

    private static PdfCell[] RowOf(IReadOnlyList<string> row) => [.. row.Select((cell, at) => PdfCell.Of(cell, StyleOf(at)))];

    private static PdfStyle StyleOf(int column) => column == 0 ? PdfStyle.CellStrong : PdfStyle.Cell;
}
