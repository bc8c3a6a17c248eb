namespace Proveout.Engine.Faults;

/// <summary>A solution of a whole cover.</summary>
/// <param name="Columns">The chosen columns.</param>
/// <param name="Units">Their cost with set-ups.</param>
/// <param name="LowerUnits">No solution costs less.</param>
/// <param name="Size">How large the problem was and what became of it.</param>
/// <param name="UsedSolver">True when the exact solver had to be asked, and answered.</param>
internal sealed record CoverSolution(IReadOnlyList<int> Columns, long Units, long LowerUnits, CoverSize Size, bool UsedSolver);
