namespace Proveout.Engine.Faults;

/// <summary>What is left of a cover after reduction.</summary>
/// <param name="Rows">Rows that are still to be satisfied, each with the columns still worth considering.</param>
/// <param name="Taken">Columns that belong to a cheapest solution.</param>
/// <param name="UsedSetUps">By index, the set-ups that are certainly used, or cost nothing.</param>
internal sealed record ReducedCover(int[][] Rows, IReadOnlyList<int> Taken, bool[] UsedSetUps);
