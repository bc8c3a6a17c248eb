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

    /// <summary>How large the journal is. Records only grow, so that the same size means that there is no news.</summary>
    Task<JournalSize> SizeAsync(CancellationToken cancellation = default);

    /// <summary>What was recorded in any build beyond what is known already, of one moment: how a summary of all builds is kept up to date.</summary>
    /// <param name="known">How many entries are known of each build; a build that is not among them is new.</param>
    /// <param name="most">At most this many builds at once, at least 1; ask again until there is no news.</param>
    /// <param name="cancellation">Cancels.</param>
    Task<IReadOnlyList<BuildNews>> ReadNewsAsync(IReadOnlyDictionary<Guid, int> known, int most, CancellationToken cancellation = default);

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

    /// <summary>Signs how far the record of a build has come, and keeps the seal with it.</summary>
    /// <param name="buildId">The build.</param>
    /// <param name="key">Signs; it is not kept.</param>
    /// <param name="person">Whose key it is; not blank.</param>
    /// <param name="cancellation">Cancels before anything is written.</param>
    /// <exception cref="BuildNotFoundException">There is no such build.</exception>
    /// <exception cref="RecordRefusedException">The record is broken: nobody should put a seal to that.</exception>
    Task<Seal> SealAsync(Guid buildId, SealKey key, string person, CancellationToken cancellation = default);

    /// <summary>What each seal says about the record as it is now: those kept with it, then others that were kept elsewhere.</summary>
    /// <param name="buildId">The build.</param>
    /// <param name="others">Seals of this build from elsewhere; they are what a forger could not reach.</param>
    /// <param name="publicKey">The key that is trusted (<see cref="SealKey.PublicKey"/>); null to accept each seal's own.</param>
    /// <param name="cancellation">Cancels.</param>
    /// <exception cref="BuildNotFoundException">There is no such build.</exception>
    Task<IReadOnlyList<SealVerdict>> CheckSealsAsync(
        Guid buildId, IReadOnlyList<Seal> others, string? publicKey, CancellationToken cancellation = default);

    /// <summary>Everything that is recorded of a build, of one moment: to be written as an archive or admitted to another journal.</summary>
    /// <exception cref="BuildNotFoundException">There is no such build.</exception>
    Task<BuildRecord> TakeOutAsync(Guid buildId, CancellationToken cancellation = default);

    /// <summary>
    /// Takes the record of a build in as it is, with its times and hashes. Where the journal has the first entries of it already, only the rest is
    /// added; where it has all, nothing.
    /// </summary>
    /// <exception cref="RecordRefusedException">The record is not whole, or parts from what this journal has of the build.</exception>
    /// <exception cref="DraftRefusedException">It holds what this journal would not have recorded.</exception>
    /// <exception cref="SerialTakenException">Another build of this machine has the serial number.</exception>
    /// <exception cref="KeyReusedException">A key of it belongs to an entry of another build.</exception>
    Task<Admitted> AdmitAsync(BuildRecord record, CancellationToken cancellation = default);

    /// <summary>Reads, and takes the place of a writer for a moment without writing anything: fails when an entry could not be kept now.</summary>
    Task ProbeAsync(CancellationToken cancellation = default);

    /// <summary>What the store itself finds wrong with how it keeps the rows, in sentences; empty when nothing.</summary>
    Task<IReadOnlyList<string>> InspectAsync(CancellationToken cancellation = default);
}
