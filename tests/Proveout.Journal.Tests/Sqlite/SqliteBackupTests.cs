using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Sqlite;

public sealed class SqliteBackupTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    private string Backup => Path.Combine(_folder.Path, "backup.db");

    private string Restored => Path.Combine(_folder.Path, "restored.db");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_backup_made_while_another_process_writes_is_whole_and_holds_all_that_was_acknowledged_before()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, TimeProvider.System);
        var build = await journal.StartBuildAsync(Drafts.Build());
        using var writer = WriterProcess.Append(_folder.Journal, build.Id, "Ada", int.MaxValue);
        for (var line = 0; line < 20; line++)
            await writer.ReadLineAsync();

        await journal.BackUpAsync(Backup);
        var after = (await journal.ReadAsync(build.Id)).Count;
        await writer.ReadLineAsync();
        writer.Kill();
        await writer.ReadToEndAsync();

        Assert.False(File.Exists(Backup + "-wal"));
        Assert.Equal(build, Assert.Single(await JournalFiles.RestoreAsync(Backup, Restored, TimeProvider.System)));
        await using var restored = await SqliteJournal.OpenAsync(Restored, TimeProvider.System);
        var entries = await restored.ReadAsync(build.Id);
        Assert.InRange(entries.Count, 20, after);
        Assert.Equal((await journal.ReadAsync(build.Id)).Take(entries.Count), entries);
    }

    [Fact]
    public async Task A_restored_journal_goes_on_where_the_backup_ended()
    {
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
        {
            await KeptRecord.WriteAsync(journal);
            await journal.BackUpAsync(Backup);
        }
        await JournalFiles.RestoreAsync(Backup, Restored, TimeProvider.System);

        await using var restored = await SqliteJournal.OpenAsync(Restored, new SteppingClock());
        var next = await restored.AppendAsync(KeptRecord.Builds[0].Id, Drafts.Note("afterwards"));

        Assert.Equal(KeptRecord.Entries.Count + 1, next.Sequence);
        Assert.IsType<ChainWhole>(await restored.VerifyAsync(next.BuildId));
    }

    [Fact]
    public async Task Nothing_is_written_over()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        await File.WriteAllTextAsync(Backup, "mine");

        var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => journal.BackUpAsync(Backup));
        await Assert.ThrowsAsync<JournalUnavailableException>(() => JournalFiles.RestoreAsync(_folder.Journal, Backup, TimeProvider.System));
        await Assert.ThrowsAsync<JournalUnavailableException>(() => JournalFiles.RescueAsync(_folder.Journal, Backup));

        Assert.Equal($"There is a file {Backup} already. It was left as it is; give another path.", refusal.Message);
        Assert.Equal("mine", await File.ReadAllTextAsync(Backup));
    }

    [Fact]
    public async Task A_backup_that_is_missing_no_journal_or_broken_is_refused_and_leaves_nothing_behind()
    {
        await Assert.ThrowsAsync<JournalUnavailableException>(() => JournalFiles.RestoreAsync(Backup, Restored, TimeProvider.System));
        await File.WriteAllTextAsync(Backup, string.Concat(Enumerable.Repeat("Shopping: bolts, washers, tape.\n", 64)));
        await Assert.ThrowsAsync<JournalFormatException>(() => JournalFiles.RestoreAsync(Backup, Restored, TimeProvider.System));
        await File.WriteAllTextAsync(Backup, "");
        await Assert.ThrowsAsync<JournalFormatException>(() => JournalFiles.RestoreAsync(Backup, Restored, TimeProvider.System));
        File.Delete(Backup);
        await using (var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
        {
            await KeptRecord.WriteAsync(journal);
            await journal.BackUpAsync(Backup);
        }
        RawFile.TakeGuardsOff(Backup);
        RawFile.Execute(Backup, "UPDATE entries SET person = 'Bo Example' WHERE sequence = 4");

        var refusal = await Assert.ThrowsAsync<RecordRefusedException>(() => JournalFiles.RestoreAsync(Backup, Restored, TimeProvider.System));

        Assert.Contains("Entry 4 does not give its own hash", refusal.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(Restored));
    }

    [Fact]
    public async Task A_backup_into_a_folder_that_may_not_be_written_says_so()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        await File.WriteAllTextAsync(Backup, "a file where a folder should be");

        var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => journal.BackUpAsync(Path.Combine(Backup, "copy.db")));

        Assert.Contains("cannot be opened for writing", refusal.Message, StringComparison.Ordinal);
    }
}
