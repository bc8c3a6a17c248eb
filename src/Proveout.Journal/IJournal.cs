namespace Proveout.Journal;

/// <summary>
/// Builds and their append-only records. What an append has returned is on the disk and stays.
/// Several processes may use one journal at the same time.
/// </summary>
/// <remarks>
/// Every member can throw <see cref="JournalUnavailableException"/> when the store cannot be reached and
/// <see cref="JournalDamagedException"/> when what is stored cannot be read; the message is a sentence for the user.
/// </remarks>
public interface IJournal : IAsyncDisposable
{
    /// <summary>Starts a build, or returns the one already started from an equal draft.</summary>
    /// <exception cref="DraftRefusedException">A field is blank or malformed.</exception>
    /// <exception cref="KeyReusedException">The identifier belongs to a build with other particulars.</exception>
    /// <exception cref="SerialTakenException">Another build of this machine has the serial number.</exception>
    Task<Build> StartBuildAsync(BuildDraft draft, CancellationToken cancellation = default);

    /// <summary>The build, or null when there is none of this identifier.</summary>
    Task<Build?> FindBuildAsync(Guid buildId, CancellationToken cancellation = default);

    /// <summary>All builds, in the order in which they were started.</summary>
    Task<IReadOnlyList<Build>> ListBuildsAsync(CancellationToken cancellation = default);

    /// <summary>
    /// Records an entry, or returns the one already recorded under the draft's key when the drafts are equal.
    /// Once writing has begun, cancelling has no effect.
    /// </summary>
    /// <exception cref="BuildNotFoundException">There is no such build.</exception>
    /// <exception cref="DraftRefusedException">A field is blank or malformed, or the photograph does not match its fingerprint.</exception>
    /// <exception cref="KeyReusedException">The key belongs to an entry that says something else.</exception>
    /// <exception cref="CorrectionRefusedException">A correction that refers to no reading of the same check in this build.</exception>
    Task<Entry> AppendAsync(Guid buildId, EntryDraft draft, CancellationToken cancellation = default);

    /// <summary>The entries after the given sequence (0 for all), in order.</summary>
    /// <exception cref="BuildNotFoundException">There is no such build.</exception>
    Task<IReadOnlyList<Entry>> ReadAsync(Guid buildId, int afterSequence = 0, CancellationToken cancellation = default);

    /// <summary>
    /// The entries after the given sequence, and then each new one soon after it is recorded, by whichever process.
    /// Goes on until cancelled.
    /// </summary>
    /// <exception cref="BuildNotFoundException">There is no such build.</exception>
    IAsyncEnumerable<Entry> WatchAsync(Guid buildId, int afterSequence = 0, CancellationToken cancellation = default);

    /// <summary>A photograph attached to a build, by the SHA-256 of its bytes; null when none of the build's entries attached it.</summary>
    /// <exception cref="JournalDamagedException">The bytes are missing or are no longer those that were attached.</exception>
    Task<Photo?> ReadPhotoAsync(Guid buildId, string sha256, CancellationToken cancellation = default);

    /// <summary>A data file attached to a build, by the SHA-256 of its bytes; null when no measurement of the build brought it.</summary>
    /// <exception cref="JournalDamagedException">The bytes are missing or are no longer those that were attached.</exception>
    Task<DataFile?> ReadDataFileAsync(Guid buildId, string sha256, CancellationToken cancellation = default);

    /// <summary>Recomputes the chain of a build, photographs and data files included, and says whether and where it is broken.</summary>
    /// <exception cref="BuildNotFoundException">There is no such build.</exception>
    Task<ChainVerdict> VerifyAsync(Guid buildId, CancellationToken cancellation = default);
}
