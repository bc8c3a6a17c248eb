namespace Proveout.Engine.Faults;

/// <summary>How many pairs of a kind there are.</summary>
/// <param name="Simulated">Pairs whose two faults can be made together.</param>
/// <param name="Masked">Those of them that the plan does not surely catch.</param>
public sealed record PairCount(long Simulated, long Masked)
{
    /// <summary>Those that the plan surely catches.</summary>
    public long Caught => Simulated - Masked;
}
