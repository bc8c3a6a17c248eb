namespace Proveout.Publish.Schedules;

/// <summary>A list that a builder works from: a title, what it is for, columns and rows.</summary>
/// <param name="Id">Identifier, lower case with hyphens; names its file.</param>
/// <param name="Title">Title.</param>
/// <param name="Purpose">What it is for and how to read it, in a sentence or two.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Its rows, a text for each column.</param>
/// <param name="Total">Sums, in a sentence; empty when there is none.</param>
public sealed record Schedule(
    string Id, string Title, string Purpose, IReadOnlyList<ScheduleColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, string Total = "")
{
    /// <summary>What can hurt when it is worked through; shown before it.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>An empty box to tick.</summary>
    public const string Box = "☐";
}
