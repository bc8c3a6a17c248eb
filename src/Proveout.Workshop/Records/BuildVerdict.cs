using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>What recomputing the chain of a build found.</summary>
/// <param name="Build">The build.</param>
/// <param name="Chain">The verdict.</param>
public sealed record BuildVerdict(Build Build, ChainVerdict Chain)
{
    /// <summary>What each seal says.</summary>
    public IReadOnlyList<SealVerdict> Seals { get; init; } = [];

    /// <summary>Where the clock of the computer was set back.</summary>
    public IReadOnlyList<ClockJump> ClockJumps { get; init; } = [];

    /// <summary>True when every entry is as it was recorded.</summary>
    public bool IsWhole => Chain is ChainWhole;

    /// <summary>True when it is whole and every seal holds.</summary>
    public bool IsSound => IsWhole && Seals.All(seal => seal.Standing == SealStanding.Holds);

    /// <summary>The verdict in a sentence.</summary>
    public string Sentence => Chain switch
    {
        ChainWhole whole => FormattableString.Invariant($"Whole: all {whole.Entries} entries are as they were recorded."),
        ChainBroken broken => FormattableString.Invariant($"Broken at entry {broken.Sequence}: {broken.Sentence}"),
        _ => throw new InvalidOperationException("A chain is whole or broken."),
    };
}
