namespace Proveout.Journal;

/// <summary>What recomputing the chain of a build found.</summary>
public abstract record ChainVerdict
{
    private protected ChainVerdict()
    {
    }
}

/// <summary>Every entry is as it was recorded, and none is missing.</summary>
/// <param name="Entries">Number of entries.</param>
/// <param name="LastHash">
/// Hash of the last entry, or of the build's own record when there is none. Kept elsewhere, on paper for example, it later shows that
/// the record up to here has not been written anew as a whole.
/// </param>
public sealed record ChainWhole(int Entries, string LastHash) : ChainVerdict;

/// <summary>The record is not as it was written.</summary>
/// <param name="Sequence">The first entry in question; 0 for the build's own record.</param>
/// <param name="Part">What of it differs.</param>
/// <param name="Sentence">The same in a sentence.</param>
public sealed record ChainBroken(long Sequence, ChainPart Part, string Sentence) : ChainVerdict
{
    /// <summary>What was done to it, as far as the hashes tell.</summary>
    public Tampering How { get; init; }
}
