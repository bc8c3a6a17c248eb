using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>A build that was copied into another journal.</summary>
/// <param name="Build">The build.</param>
/// <param name="WereThere">Entries that the other journal had already.</param>
/// <param name="Added">Entries that were added.</param>
/// <param name="LastHash">Hash of the last entry that was copied.</param>
/// <param name="Chain">What recomputing the chain there found.</param>
public sealed record CopiedBuild(Build Build, int WereThere, int Added, string LastHash, ChainVerdict Chain)
{
    /// <summary>Entries recorded in the old journal while the copy was made, which the new one lacks.</summary>
    public int GrewBy { get; init; }

    /// <summary>Entries of the copy.</summary>
    public int Entries => WereThere + Added;

    /// <summary>True when the copy is whole and ends where the record that was copied ended.</summary>
    public bool IsWhole => Chain is ChainWhole whole && whole.LastHash == LastHash;
}
