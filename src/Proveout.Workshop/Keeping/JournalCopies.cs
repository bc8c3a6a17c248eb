using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Backs a journal up while it is in use, and puts a backup in the place of one that is gone.</summary>
/// <param name="clock">The clock of the journal.</param>
public sealed class JournalCopies(TimeProvider clock)
{
    /// <summary>Copies a journal and recomputes every chain of the copy; the copy is kept also where a record in it is broken.</summary>
    /// <exception cref="JournalException">The journal cannot be read or the copy cannot be written.</exception>
    public async Task<IReadOnlyList<BuildVerdict>> BackUpAsync(string journal, string target, CancellationToken cancellation)
    {
        await using (var opened = await SqliteJournal.OpenAsync(journal, clock, cancellation: cancellation))
            await opened.BackUpAsync(target, cancellation);
        return [.. (await JournalFiles.CheckAsync(target, cancellation)).Select(found => new BuildVerdict(found.Build, found.Verdict))];
    }

    /// <summary>Restores a backup where no journal is.</summary>
    /// <returns>The builds that are there again.</returns>
    /// <exception cref="JournalException">The backup is not whole, or there is a journal already.</exception>
    public Task<IReadOnlyList<Build>> RestoreAsync(string backup, string journal, CancellationToken cancellation) =>
        JournalFiles.RestoreAsync(backup, journal, clock, cancellation);
}
