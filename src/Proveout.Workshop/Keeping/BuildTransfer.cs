using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Takes the record of a build out as an archive, and an archive in.</summary>
/// <param name="journal">The journal that it leaves or enters.</param>
public sealed class BuildTransfer(IJournal journal)
{
    /// <summary>The record of a build, to be written with <see cref="BuildArchive"/>.</summary>
    /// <exception cref="JournalException">The record cannot be read.</exception>
    public Task<BuildRecord> ExportAsync(Build build, CancellationToken cancellation) => journal.TakeOutAsync(build.Id, cancellation);

    /// <summary>Takes a record in, whole or not at all.</summary>
    /// <param name="record">Of an archive, as <see cref="Read"/> gives it.</param>
    /// <param name="cancellation">Cancels before anything is written.</param>
    /// <exception cref="JournalException">The record is refused.</exception>
    public Task<Admitted> ImportAsync(BuildRecord record, CancellationToken cancellation) => journal.AdmitAsync(record, cancellation);

    /// <summary>Reads an archive, before any journal is opened for it.</summary>
    /// <exception cref="ArchiveRefusedException">It is not what was written.</exception>
    public static BuildRecord Read(Stream archive) => BuildArchive.Read(archive, ArchiveLimits.Usual);
}
