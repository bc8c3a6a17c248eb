using PdfSharp.Pdf;

namespace Proveout.Publish.Report;

/// <summary>Writes a report as a PDF on A4 with its fonts inside.</summary>
public static class PdfReport
{
    /// <summary>Writes the document and leaves the stream open. Equal input gives equal bytes.</summary>
    public static void Write(ReportModel report, Stream destination)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(destination);
        using var document = new PdfDocument();
        Describe(document, report);
        using (var sheet = new PdfSheet(document))
            new PdfSections(sheet, report).Write();
        PdfFrame.Draw(document, report);
        using var file = new MemoryStream();
        document.Save(file, closeStream: false);
        destination.Write(PdfIdentity.FromContent(file.ToArray()));
    }

    private static void Describe(PdfDocument document, ReportModel report)
    {
        var written = report.Written.UtcDateTime;
        document.Info.Title = PlainText.Clean($"{report.Machine}, {report.Serial}: record of checks");
        document.Info.Author = PlainText.Clean(report.Builder);
        document.Info.Subject = PlainText.Clean($"Last hash {report.LastHash}");
        document.Info.Creator = "Proveout";
        document.Info.CreationDate = written;
        document.Info.ModificationDate = written;
        document.Language = "en";
    }
}
