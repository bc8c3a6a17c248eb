namespace Proveout.Publish.Report;

/// <summary>Writes a report as a PDF on A4 with its fonts inside.</summary>
public static class PdfReport
{
    /// <summary>Writes the document and leaves the stream open. Equal input gives equal bytes.</summary>
    public static void Write(ReportModel report, Stream destination)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(destination);
        var title = new BookTitle(
            $"{report.Machine}, {report.Serial}: record of checks",
            report.Machine,
            $"Serial {report.Serial}",
            report.Builder,
            $"Last hash {report.LastHash}",
            report.Written);
        PdfBook.Write(title, destination, document =>
        {
            using var sheet = new PdfSheet(document);
            new PdfSections(sheet, report).Write();
        });
    }
}
