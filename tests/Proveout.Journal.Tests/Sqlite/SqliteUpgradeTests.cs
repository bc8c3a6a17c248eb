using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Sqlite;

/// <summary>Every format that was ever written is kept as a file under Kept/, and each is brought up to date with nothing lost.</summary>
public sealed class SqliteUpgradeTests : IDisposable
{
    private static readonly string Kept = Path.Combine(AppContext.BaseDirectory, "Kept");
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<int> Formats => [.. Enumerable.Range(1, (int)Journal.Sqlite.SqliteFile.Format)];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Formats))]
    public async Task A_kept_file_opens_whole_with_all_that_was_recorded_and_takes_more(int format)
    {
        File.Copy(Path.Combine(Kept, FormattableString.Invariant($"format-{format}.db")), _folder.Journal);
        Assert.Equal(format, RawFile.Read<long>(_folder.Journal, "PRAGMA user_version"));
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock());
        using var key = SealKey.Make();

        var builds = await journal.ListBuildsAsync();
        var entries = await journal.ReadAsync(builds[0].Id);

        Assert.Equal(KeptRecord.Builds, builds.Select(build => new BuildDraft(build.Id, build.Serial, build.MachineName, build.MachineFingerprint, build.Builder)));
        Assert.Equal(KeptRecord.Entries.Select(draft => (draft.Key, draft.Person, draft.Content)), entries.Select(entry => (entry.Key, entry.Person, entry.Content)));
        Assert.Equal(KeptRecord.Entries[6].FileBytes.ToArray(), (await journal.ReadPhotoAsync(builds[0].Id, ((PhotoAttached)entries[6].Content).Sha256))!.Bytes.ToArray());
        Assert.Equal(entries.Count, Assert.IsType<ChainWhole>(await journal.VerifyAsync(builds[0].Id)).Entries);
        Assert.Empty(await journal.InspectAsync());
        Assert.Equal(entries.Count + 1, (await journal.AppendAsync(builds[0].Id, Drafts.Note("afterwards"))).Sequence);
        Assert.Equal(entries.Count + 1, (await journal.SealAsync(builds[0].Id, key, "Ada Example")).Entries);
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public async Task A_kept_file_becomes_what_a_new_journal_is(int format)
    {
        File.Copy(Path.Combine(Kept, FormattableString.Invariant($"format-{format}.db")), _folder.Journal);
        var fresh = Path.Combine(_folder.Path, "fresh.db");
        await using (await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
        await using (await SqliteJournal.OpenAsync(fresh, new SteppingClock()))
        {
        }

        const string Schema = "SELECT group_concat(sql, char(10)) FROM (SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY type, name)";
        Assert.Equal(RawFile.Read<string>(fresh, Schema), RawFile.Read<string>(_folder.Journal, Schema));
        Assert.Equal(Journal.Sqlite.SqliteFile.Format, RawFile.Read<long>(_folder.Journal, "PRAGMA user_version"));
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public async Task A_backup_of_any_format_is_restored_and_itself_left_as_it_is(int format)
    {
        var backup = Path.Combine(_folder.Path, "backup.db");
        File.Copy(Path.Combine(Kept, FormattableString.Invariant($"format-{format}.db")), backup);
        var before = await File.ReadAllBytesAsync(backup);

        Assert.Equal(["K-1", "K-2"], (await JournalFiles.RestoreAsync(backup, _folder.Journal, TimeProvider.System)).Select(build => build.Serial));
        Assert.Equal(before, await File.ReadAllBytesAsync(backup));
    }

    [Fact]
    public async Task Many_may_bring_the_same_file_up_to_date_at_once()
    {
        File.Copy(Path.Combine(Kept, "format-1.db"), _folder.Journal);

        var journals = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock())));

        Assert.All(await Task.WhenAll(journals.Select(journal => journal.VerifyAsync(KeptRecord.Builds[0].Id))), verdict => Assert.IsType<ChainWhole>(verdict));
        foreach (var journal in journals)
            await journal.DisposeAsync();
    }
}
