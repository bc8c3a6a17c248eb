namespace Proveout.Engine.Faults;

/// <summary>A solution of one part of a cover.</summary>
/// <param name="Columns">The chosen columns, rising.</param>
/// <param name="Units">Their cost with the part's undecided set-ups.</param>
/// <param name="LowerUnits">No solution of the part costs less.</param>
internal sealed record PartSolution(IReadOnlyList<int> Columns, long Units, long LowerUnits);
