namespace Proveout.Publish.Report;

/// <summary>A cell of a table: paragraphs below each other, and a verdict's shape before the first.</summary>
internal sealed record PdfCell(IReadOnlyList<PdfRun> Paragraphs, ReportVerdict? Verdict = null)
{
    /// <summary>A cell with one paragraph.</summary>
    public static PdfCell Of(string text, PdfStyle? style = null) => new([new PdfRun(text, style ?? PdfStyle.Cell)]);

    /// <summary>A cell with a paragraph and a note below it; an empty note takes no room.</summary>
    public static PdfCell Of(string text, PdfStyle style, string note) => new([new PdfRun(text, style), new PdfRun(note, PdfStyle.Note)]);
}
