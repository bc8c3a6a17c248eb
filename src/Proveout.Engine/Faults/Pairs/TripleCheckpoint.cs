namespace Proveout.Engine.Faults;

/// <summary>How far a run over triples has come; a run can be continued from it.</summary>
/// <param name="RowsDone">Number of faults whose triples are done.</param>
/// <param name="Masked">Masked triples found that hold a fault which the plan catches alone.</param>
/// <param name="Examples">Some of them.</param>
public sealed record TripleCheckpoint(int RowsDone, long Masked, IReadOnlyList<int[]> Examples)
{
    /// <summary>Nothing is done yet.</summary>
    public static TripleCheckpoint Start { get; } = new(0, 0, []);
}
