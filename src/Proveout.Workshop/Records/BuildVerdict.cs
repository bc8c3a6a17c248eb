using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>What recomputing the chain of a build found.</summary>
/// <param name="Build">The build.</param>
/// <param name="Chain">The verdict.</param>
public sealed record BuildVerdict(Build Build, ChainVerdict Chain)
{
    /// <summary>True when every entry is as it was recorded.</summary>
    public bool IsWhole => Chain is ChainWhole;

    /// <summary>The verdict in a sentence.</summary>
    public string Sentence => Chain switch
    {
        ChainWhole whole => FormattableString.Invariant($"Whole: all {whole.Entries} entries are as they were recorded."),
        ChainBroken broken => FormattableString.Invariant($"Broken at entry {broken.Sequence}: {broken.Sentence}"),
        _ => throw new InvalidOperationException("A chain is whole or broken."),
    };
}
