using System.Text;
using Proveout.Publish.Schedules;

namespace Proveout.Workshop;

/// <summary>The files of a machine's schedules and labels. They bear no moment of writing, so that equal machines give equal files.</summary>
public static class PaperFiles
{
    // A spreadsheet takes a file without the mark for one of its own old character set.
    private static readonly UTF8Encoding WithMark = new(encoderShouldEmitUTF8Identifier: true);

    private static readonly UTF8Encoding Plain = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PaperFile> Of(ScheduleBook book) =>
    [
        .. book.Schedules.Select(schedule => new PaperFile(
            $"{schedule.Id}.csv", "text/csv; charset=utf-8", stream => Put(stream, CsvSchedule.Write(schedule), WithMark))),
        new("schedules.html", "text/html; charset=utf-8", stream => Put(stream, HtmlSchedules.Write(book), Plain)),
        new("schedules.pdf", "application/pdf", stream => PdfSchedules.Write(book, DateTimeOffset.UnixEpoch, stream)),
        new("labels.html", "text/html; charset=utf-8", stream => Put(stream, HtmlLabels.Write(book), Plain)),
        new("labels.pdf", "application/pdf", stream => PdfLabels.Write(book, DateTimeOffset.UnixEpoch, stream)),
    ];

    /// <summary>One table: as a page, on paper, and for a spreadsheet.</summary>
    /// <param name="name">Name of the files, without what stands behind the point.</param>
    /// <param name="table">What the spreadsheet gets.</param>
    /// <param name="book">What is read and printed.</param>
    public static IReadOnlyList<PaperFile> Of(string name, Schedule table, ScheduleBook book) =>
    [
        new($"{name}.csv", "text/csv; charset=utf-8", stream => Put(stream, CsvSchedule.Write(table), WithMark)),
        new($"{name}.html", "text/html; charset=utf-8", stream => Put(stream, HtmlSchedules.Write(book), Plain)),
        new($"{name}.pdf", "application/pdf", stream => PdfSchedules.Write(book, DateTimeOffset.UnixEpoch, stream)),
    ];

    private static void Put(Stream stream, string text, Encoding encoding)
    {
        stream.Write(encoding.GetPreamble());
        stream.Write(encoding.GetBytes(text));
    }
}
