namespace Proveout.Workshop;

/// <summary>One schedule.</summary>
/// <param name="Id">Identifier, lower case with hyphens.</param>
/// <param name="Title">Title.</param>
/// <param name="Purpose">What it is for.</param>
/// <param name="Headings">Headings of its columns.</param>
/// <param name="Rows">Its rows, a text for each column.</param>
/// <param name="Total">Sums, in a sentence; empty when there is none.</param>
public sealed record PaperTable(
    string Id, string Title, string Purpose, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<string>> Rows, string Total);
