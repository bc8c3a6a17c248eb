namespace Proveout.Engine.Faults;

/// <summary>How far a run over all pairs has come; a run can be continued from it.</summary>
/// <param name="RowsDone">Number of faults whose pairs are done.</param>
/// <param name="NoneCaughtCaught">Pairs of two faults that the plan does not catch alone and catches together.</param>
/// <param name="Masked">The masked pairs found.</param>
public sealed record PairCheckpoint(int RowsDone, long NoneCaughtCaught, IReadOnlyList<MaskedPair> Masked)
{
    /// <summary>Nothing is done yet.</summary>
    public static PairCheckpoint Start { get; } = new(0, 0, []);
}
