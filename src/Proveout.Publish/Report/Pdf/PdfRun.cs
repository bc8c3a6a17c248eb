namespace Proveout.Publish.Report;

/// <summary>A paragraph or a line of it, in one style.</summary>
internal sealed record PdfRun(string Text, PdfStyle Style);
