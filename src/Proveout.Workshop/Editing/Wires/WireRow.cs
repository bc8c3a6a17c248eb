namespace Proveout.Workshop;

/// <summary>A row of a wire list.</summary>
/// <param name="Line">Its line in the list.</param>
/// <param name="Name">The conductor.</param>
/// <param name="Texts">What it says of each field that the list has a column of.</param>
internal sealed record WireRow(int Line, string Name, IReadOnlyList<(RowField Field, string Text)> Texts);
