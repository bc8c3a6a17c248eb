namespace Proveout.Workshop;

/// <summary>A drawing of what was measured.</summary>
/// <param name="Name">Short name of small letters and hyphens.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Words">The same in words.</param>
/// <param name="Pictures">SVG elements for a page, each with a caption.</param>
/// <param name="Paper">The same on one sheet of A4, as an SVG document.</param>
/// <param name="Table">The figures that it was drawn from.</param>
public sealed record SheetDrawing(string Name, string Title, string Words, IReadOnlyList<(string Svg, string Caption)> Pictures, string Paper, SheetTable Table);

/// <summary>A table.</summary>
/// <param name="Heads">Heads of its columns.</param>
/// <param name="Rows">Its rows, as texts.</param>
/// <param name="Left">Rows that were left out to keep it short.</param>
public sealed record SheetTable(IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows, int Left);
