namespace Proveout.Workshop;

/// <summary>A section of a machine as a table.</summary>
/// <param name="Section">The section.</param>
/// <param name="Title">What it is called.</param>
/// <param name="One">What one of its rows is called.</param>
/// <param name="Headings">Headings of its columns; the first is that of the names.</param>
/// <param name="Rows">Its rows, in the order of the files.</param>
public sealed record EditTable(string Section, string Title, string One, IReadOnlyList<string> Headings, IReadOnlyList<EditRow> Rows);
