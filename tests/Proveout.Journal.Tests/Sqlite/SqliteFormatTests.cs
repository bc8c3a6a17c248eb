namespace Proveout.Journal.Tests.Sqlite;

public sealed class SqliteFormatTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_new_journal_says_what_it_is_and_writes_ahead()
    {
        await OpenAndCloseAsync(_folder.Journal);

        Assert.Equal(0x5052564FL, RawFile.Read<long>(_folder.Journal, "PRAGMA application_id"));
        Assert.Equal(2L, RawFile.Read<long>(_folder.Journal, "PRAGMA user_version"));
        Assert.Equal("wal", RawFile.Read<string>(_folder.Journal, "PRAGMA journal_mode"));
    }

    [Fact]
    public async Task A_journal_of_a_newer_format_is_refused_with_both_formats_named_and_left_as_it_is()
    {
        await OpenAndCloseAsync(_folder.Journal);
        RawFile.Execute(_folder.Journal, "PRAGMA user_version = 3");
        var before = await File.ReadAllBytesAsync(_folder.Journal);

        var refusal = await Assert.ThrowsAsync<JournalFormatException>(() => OpenAndCloseAsync(_folder.Journal));

        Assert.Equal(
            $"The journal {_folder.Journal} has format 3, and this Proveout knows formats up to 2. Open it with a newer Proveout; it was left as it is.",
            refusal.Message);
        Assert.Equal(before, await File.ReadAllBytesAsync(_folder.Journal));
    }

    [Fact]
    public async Task A_journal_that_lost_its_write_ahead_mode_in_copying_gets_it_back()
    {
        await OpenAndCloseAsync(_folder.Journal);
        RawFile.Execute(_folder.Journal, "PRAGMA journal_mode = DELETE");

        await OpenAndCloseAsync(_folder.Journal);

        Assert.Equal("wal", RawFile.Read<string>(_folder.Journal, "PRAGMA journal_mode"));
    }

    [Theory]
    [InlineData("CREATE TABLE recipes (name TEXT)")]
    [InlineData("PRAGMA application_id = 77")]
    [InlineData("PRAGMA user_version = 1")]
    public async Task A_database_of_something_else_is_refused_and_left_as_it_is(string sql)
    {
        RawFile.Execute(_folder.Journal, sql);
        var before = await File.ReadAllBytesAsync(_folder.Journal);

        var refusal = await Assert.ThrowsAsync<JournalFormatException>(() => OpenAndCloseAsync(_folder.Journal));

        Assert.Contains($"{_folder.Journal} is not a journal.", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(_folder.Journal));
    }

    [Fact]
    public async Task A_file_that_is_no_database_is_refused()
    {
        await File.WriteAllTextAsync(_folder.Journal, string.Concat(Enumerable.Repeat("Shopping: bolts, washers, tape.\n", 64)));

        var refusal = await Assert.ThrowsAsync<JournalFormatException>(() => OpenAndCloseAsync(_folder.Journal));

        Assert.Contains($"{_folder.Journal} is not a journal.", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Folders_that_are_missing_are_made()
    {
        var path = Path.Combine(_folder.Path, "records", "oven", "journal.db");

        await OpenAndCloseAsync(path);

        Assert.True(File.Exists(path));
    }

    [Fact]
    public async Task Many_may_create_the_same_journal_at_once()
    {
        var journals = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock())));

        await Task.WhenAll(journals.Select((journal, number) => journal.StartBuildAsync(Drafts.Build($"{number}"))));

        Assert.Equal(8, (await journals[0].ListBuildsAsync()).Count);
        foreach (var journal in journals)
            await journal.DisposeAsync();
    }

    private static async Task OpenAndCloseAsync(string path)
    {
        await using var journal = await SqliteJournal.OpenAsync(path, new SteppingClock());
    }
}
