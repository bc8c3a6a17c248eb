using Proveout.Journal.Rescue;
using Proveout.Journal.Sqlite;

namespace Proveout.Journal;

/// <summary>What is done with the file of a journal as a whole.</summary>
public static class JournalFiles
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(20);

    /// <summary>Puts a backup in the place of a journal that is not there, after recomputing every chain of it.</summary>
    /// <param name="backup">The backup; it is only read.</param>
    /// <param name="path">Where the journal goes; nothing may be there.</param>
    /// <param name="clock">The clock of the journal.</param>
    /// <param name="cancellation">Cancels before anything is written.</param>
    /// <returns>The builds that were restored.</returns>
    /// <exception cref="JournalFormatException">The backup is no journal.</exception>
    /// <exception cref="JournalUnavailableException">There is a journal already, or none can be written.</exception>
    /// <exception cref="RecordRefusedException">The backup is not whole.</exception>
    public static async Task<IReadOnlyList<Build>> RestoreAsync(string backup, string path, TimeProvider clock, CancellationToken cancellation = default)
    {
        if (!File.Exists(backup))
            throw new JournalUnavailableException($"There is no backup {backup}. Give the path of one that `proveout backup` made.", null);
        await Task.Run(() => new SqliteFile(backup, LongestWait).CopyReadOnlyTo(path), cancellation).ConfigureAwait(false);
        try
        {
            await using var restored = await SqliteJournal.OpenAsync(path, clock, cancellation: cancellation).ConfigureAwait(false);
            return await RequireWholeAsync(restored, backup, cancellation).ConfigureAwait(false);
        }
        catch
        {
            SqliteCopy.Discard(path);
            throw;
        }
    }

    /// <summary>Recomputes every chain of a file of the present format without changing it, as of a backup just made.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cancellation">Cancels.</param>
    public static async Task<IReadOnlyList<(Build Build, ChainVerdict Verdict)>> CheckAsync(string path, CancellationToken cancellation = default)
    {
        await using var journal = new StoreJournal(new SqliteStore(new SqliteFile(path, LongestWait)), TimeProvider.System);
        var verdicts = new List<(Build, ChainVerdict)>();
        foreach (var build in await journal.ListBuildsAsync(cancellation).ConfigureAwait(false))
            verdicts.Add((build, await journal.VerifyAsync(build.Id, cancellation).ConfigureAwait(false)));
        return verdicts;
    }

    /// <summary>Says what can be read of a journal, damaged or not, without changing it and without the database.</summary>
    /// <exception cref="JournalUnavailableException">The file cannot be read at all.</exception>
    public static Task<RescueReport> SurveyAsync(string path, CancellationToken cancellation = default) =>
        Task.Run(
            () =>
            {
                using var salvage = Read(path);
                return LossReport.Of(salvage);
            },
            cancellation);

    /// <summary>Saves what can be read of a damaged journal into a new one; the damaged file is left as it is.</summary>
    /// <param name="path">The damaged journal.</param>
    /// <param name="target">The new journal; nothing may be there.</param>
    /// <param name="cancellation">Cancels before anything is written.</param>
    /// <exception cref="JournalUnavailableException">The file cannot be read at all, or the new one cannot be written.</exception>
    public static Task<RescueReport> RescueAsync(string path, string target, CancellationToken cancellation = default) => Task.Run(
        () =>
        {
            using var salvage = Read(path);
            var report = LossReport.Of(salvage);
            SqliteErrors.Translate(target, () => SqliteCopy.MakeEmpty(target));
            try
            {
                SqliteRescue.Write(salvage, target);
            }
            catch
            {
                SqliteCopy.Discard(target);
                throw;
            }
            return report;
        },
        cancellation);

    private static Salvage Read(string path)
    {
        try
        {
            return Salvage.Of(path);
        }
        catch (Exception cause) when (cause is IOException or UnauthorizedAccessException)
        {
            throw new JournalUnavailableException($"{path} cannot be read. See that the path is right, that you may read it, and that the disk is sound.", cause);
        }
    }

    private static async Task<IReadOnlyList<Build>> RequireWholeAsync(SqliteJournal restored, string backup, CancellationToken cancellation)
    {
        if (await restored.InspectAsync(cancellation).ConfigureAwait(false) is [var finding, ..])
            throw new RecordRefusedException($"The backup {backup} is damaged ({finding}) and was not restored. `proveout rescue` saves what can be read of it.");
        var builds = await restored.ListBuildsAsync(cancellation).ConfigureAwait(false);
        foreach (var build in builds)
            if (await restored.VerifyAsync(build.Id, cancellation).ConfigureAwait(false) is ChainBroken broken)
                throw new RecordRefusedException(
                    $"The record of build {build.Serial} in the backup {backup} is broken, and the backup was not restored. {broken.Sentence} "
                    + "`proveout rescue` saves what can be read of it.");
        return builds;
    }
}
