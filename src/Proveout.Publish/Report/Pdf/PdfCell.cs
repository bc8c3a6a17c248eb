namespace Proveout.Publish.Report;

/// <summary>A cell of a table: paragraphs below each other, and a verdict's shape before the first.</summary>
internal sealed record PdfCell(IReadOnlyList<PdfRun> Paragraphs, ReportVerdict? Verdict = null)
{
    /// <summary>A cell with one paragraph.</summary>
    public static PdfCell Of(string text) => Of(text, PdfStyle.Cell);

    /// <summary>A cell with a paragraph and notes below it; an empty note takes no room.</summary>
    public static PdfCell Of(string text, PdfStyle style, params IEnumerable<string> notes) =>
        new([new PdfRun(text, style), .. notes.Select(note => new PdfRun(note, PdfStyle.Note))]);
}
