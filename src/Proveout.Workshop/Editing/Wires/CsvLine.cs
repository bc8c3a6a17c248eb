namespace Proveout.Workshop;

/// <summary>A record of a file of comma-separated values.</summary>
/// <param name="Number">Line that it begins on, counted from 1.</param>
/// <param name="Cells">Its cells.</param>
/// <param name="IsClosed">False when a quotation mark opens and none closes.</param>
internal sealed record CsvLine(int Number, IReadOnlyList<string> Cells, bool IsClosed);
