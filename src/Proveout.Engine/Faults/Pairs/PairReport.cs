namespace Proveout.Engine.Faults;

/// <summary>What a plan does against every pair of faults.</summary>
/// <param name="BothCaught">Pairs of two faults that the plan catches alone.</param>
/// <param name="OneCaught">Pairs of a fault that it catches alone and one that it does not.</param>
/// <param name="NoneCaught">Pairs of two faults that it does not catch alone.</param>
/// <param name="Contradictory">Pairs left out because they cannot be made together, such as the same end in two places.</param>
/// <param name="Masked">The masked pairs, in order of their faults: of pairs of two faults that are not caught alone only those that ask for a check.</param>
public sealed record PairReport(
    PairCount BothCaught,
    PairCount OneCaught,
    PairCount NoneCaught,
    long Contradictory,
    IReadOnlyList<MaskedPair> Masked)
{
    /// <summary>Number of pairs that can be made together.</summary>
    public long Simulated => BothCaught.Simulated + OneCaught.Simulated + NoneCaught.Simulated;

    /// <summary>Number of pairs that the plan surely catches.</summary>
    public long Caught => BothCaught.Caught + OneCaught.Caught + NoneCaught.Caught;

    /// <summary>For every pair that can hurt or destroy and could be caught: indices of the checks of which one must be added to the plan.</summary>
    public IReadOnlyList<int[]> AlsoCatch =>
    [
        .. Masked
            .Where(pair => pair.AsksForCheck)
            .Select(pair => pair.Shows.CatchingChecks.ToArray())
            .DistinctBy(checks => string.Join(',', checks)),
    ];
}
