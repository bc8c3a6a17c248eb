using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Takes the record of a build out as an archive, and an archive in.</summary>
/// <param name="journal">The journal that it leaves or enters.</param>
public sealed class BuildTransfer(IJournal journal)
{
    /// <summary>The record of a build, to be written with <see cref="BuildArchive"/>.</summary>
    /// <exception cref="JournalException">The record cannot be read.</exception>
    public Task<BuildRecord> ExportAsync(Build build, CancellationToken cancellation) => journal.TakeOutAsync(build.Id, cancellation);

    /// <summary>Takes a record in from an archive, whole or not at all.</summary>
    /// <exception cref="JournalException">The archive or the record in it is refused.</exception>
    public Task<Admitted> ImportAsync(Stream archive, CancellationToken cancellation) =>
        journal.AdmitAsync(BuildArchive.Read(archive, ArchiveLimits.Usual), cancellation);
}
