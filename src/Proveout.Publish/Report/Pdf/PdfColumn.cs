namespace Proveout.Publish.Report;

/// <summary>A column of a table.</summary>
/// <param name="Heading">Its heading, repeated on every page.</param>
/// <param name="Width">Its width in points.</param>
internal sealed record PdfColumn(string Heading, double Width);
