using System.Text.Json;
using Microsoft.Data.Sqlite;
using Proveout.Journal;

namespace Proveout.Cli.Tests;

/// <summary>Backup, restore, rescue, export, import and seals, as typed.</summary>
public sealed class KeepingTests : IAsyncLifetime
{
    private static readonly string MachineFile = Fingerprint.OfText("format: proveout-machine 1\n");
    private readonly TemporaryFolder _folder = new();
    private readonly Guid _build = Guid.NewGuid();

    private string Journal => _folder.At("journal.db");

    public async ValueTask InitializeAsync()
    {
        await using var journal = await SqliteJournal.OpenAsync(Journal, TimeProvider.System);
        await journal.StartBuildAsync(new BuildDraft(_build, "K-1", "Small oven", MachineFile, "Ada Example"));
        foreach (var text in new[] { "one", "two", "three" })
            await journal.AppendAsync(_build, new EntryDraft(Guid.NewGuid(), "Ada Example", "", new NoteWritten($"note number {text}")));
        await journal.AppendAsync(_build, EntryDraft.OfPhoto(Guid.NewGuid(), "Ada Example", "X1", "inlet.jpg", "image/jpeg", new byte[] { 1, 2, 3 }, ""));
    }

    public ValueTask DisposeAsync()
    {
        _folder.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_backup_is_restored_where_no_journal_is_and_never_over_one()
    {
        var backup = await Run.OfAsync("backup", _folder.At("backup.db"), "--journal", Journal);
        var again = await Run.OfAsync("backup", _folder.At("backup.db"), "--journal", Journal);
        var over = await Run.OfAsync("restore", _folder.At("backup.db"), "--journal", Journal);
        var restored = await Run.OfAsync("restore", _folder.At("backup.db"), "--journal", _folder.At("restored.db"));

        Assert.Equal((0, 2, 2, 0), (backup.Exit, again.Exit, over.Exit, restored.Exit));
        Assert.Contains("1 builds.", backup.Output, StringComparison.Ordinal);
        Assert.Contains("There is a file", over.Error, StringComparison.Ordinal);
        Assert.Equal(0, (await Run.OfAsync("verify", "K-1", "--journal", _folder.At("restored.db"))).Exit);
    }

    [Fact]
    public async Task A_build_goes_from_one_journal_to_another_as_an_archive_and_is_taken_once()
    {
        var export = await Run.OfAsync("export-build", "K-1", "--to", _folder.At("k-1.zip"), "--journal", Journal);
        var first = await Run.OfAsync("import-build", _folder.At("k-1.zip"), "--journal", _folder.At("other.db"));
        var second = await Run.OfAsync("import-build", _folder.At("k-1.zip"), "--journal", _folder.At("other.db"));
        var verified = await Run.OfAsync("verify", "--all", "--journal", _folder.At("other.db"));

        Assert.Equal((0, 0, 0, 0), (export.Exit, first.Exit, second.Exit, verified.Exit));
        Assert.Contains("4 entries were taken in, 0 were there already", first.Output, StringComparison.Ordinal);
        Assert.Contains("was there already, with all 4 entries", second.Output, StringComparison.Ordinal);
        Assert.Contains("Whole: all 4 entries", verified.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no archive at all")]
    [InlineData("PK\u0003\u0004 cut off")]
    public async Task What_is_no_archive_is_refused_in_a_sentence(string text)
    {
        var run = await Run.OfAsync("import-build", _folder.Write("x.zip", text), "--journal", _folder.At("new.db"));

        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.False(File.Exists(_folder.At("new.db")));
        Assert.StartsWith("The archive ", run.Error, StringComparison.Ordinal);
        Assert.Equal(2, (await Run.OfAsync("import-build", _folder.At("nowhere.zip"), "--journal", Journal)).Exit);
    }

    [Fact]
    public async Task A_seal_kept_elsewhere_tells_that_the_end_was_cut_off()
    {
        Assert.Equal(0, (await Run.OfAsync("seal-key", _folder.At("my.key"))).Exit);
        Assert.Equal(2, (await Run.OfAsync("seal-key", _folder.At("my.key"))).Exit);
        var wrongHalf = await Run.OfAsync("seal", "K-1", "--key", _folder.At("my.key.pub"), "--person", "Ada Example", "--journal", Journal);
        var seal = await Run.OfAsync("seal", "K-1", "--key", _folder.At("my.key"), "--person", "Ada Example", "--to", _folder.At("k-1.seal.json"), "--journal", Journal);
        string[] verify = ["verify", "K-1", "--seal", _folder.At("k-1.seal.json"), "--key", _folder.At("my.key.pub"), "--journal", Journal];
        var whole = await Run.OfAsync(verify);

        CutOff();
        var cut = await Run.OfAsync(verify);

        Assert.Equal((2, 0, 0, 1), (wrongHalf.Exit, seal.Exit, whole.Exit, cut.Exit));
        Assert.Contains("holds: up to there the record is as it was sealed.", whole.Output, StringComparison.Ordinal);
        Assert.Contains("Whole: all 3 entries", cut.Output, StringComparison.Ordinal);
        Assert.Contains("shows that the record was cut off: only 3 entries are there.", cut.Output, StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(_folder.At("my.key")));
    }

    [Fact]
    public async Task A_damaged_journal_is_located_by_verify_and_saved_by_rescue()
    {
        SqliteConnection.ClearAllPools();
        var bytes = await File.ReadAllBytesAsync(Journal);
        for (var at = bytes.AsSpan().IndexOf("note number two"u8); at >= 0; at = bytes.AsSpan().IndexOf("note number two"u8))
            "note nXXXXXXtwo"u8.CopyTo(bytes.AsSpan(at));
        // Everything after the header: the database does not find its own tables.
        Array.Fill(bytes, (byte)0x5A, 100, 200);
        await File.WriteAllBytesAsync(Journal, bytes);

        var verify = await Run.OfAsync("verify", "--all", "--journal", Journal);
        var rescue = await Run.OfAsync("rescue", Journal, "--to", _folder.At("rescued.db"));
        var rescued = await Run.OfAsync("verify", "K-1", "--journal", _folder.At("rescued.db"));

        Assert.Equal((1, 1, 1), (verify.Exit, rescue.Exit, rescued.Exit));
        Assert.Contains($"Entry 2 of build K-1 ({_build}) is lost.", verify.Output, StringComparison.Ordinal);
        Assert.Contains("note nXXXXXXtwo", rescue.Output, StringComparison.Ordinal);
        Assert.Contains("Entry 2 is missing", rescued.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_in_which_nothing_can_be_made_out_says_so() =>
        Assert.Contains("No build can be made out", (await Run.OfAsync("rescue", _folder.Write("x.db", "nothing"))).Output, StringComparison.Ordinal);

    [Fact]
    public async Task What_each_prints_as_JSON_is_described()
    {
        var document = await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "json.md"));
        await Run.OfAsync("seal-key", _folder.At("my.key"));
        foreach (var (format, words) in new (string, string[])[]
        {
            ("proveout-sealing 1", ["seal", "K-1", "--key", _folder.At("my.key"), "--person", "Ada Example", "--journal", Journal]),
            ("proveout-verification 1", ["verify", "K-1", "--journal", Journal]),
            ("proveout-backup 1", ["backup", _folder.At("backup.db"), "--journal", Journal]),
            ("proveout-restore 1", ["restore", _folder.At("backup.db"), "--journal", _folder.At("restored.db")]),
            ("proveout-rescue 1", ["rescue", Journal]),
            ("proveout-transfer 1", ["export-build", "K-1", "--to", _folder.At("k-1.zip"), "--journal", Journal]),
            ("proveout-transfer 1", ["import-build", _folder.At("k-1.zip"), "--journal", Journal]),
        })
        {
            var run = await Run.OfAsync([.. words, "--json"]);
            using var json = JsonDocument.Parse(run.Output);
            Assert.Equal((0, format), (run.Exit, json.RootElement.GetProperty("format").GetString()));
            Assert.Contains($"`{format}`", document, StringComparison.Ordinal);
            Assert.All(KeysOf(json.RootElement).Distinct(), key => Assert.Contains($"`{key}`", document, StringComparison.Ordinal));
        }
    }

    private static IEnumerable<string> KeysOf(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property => KeysOf(property.Value).Prepend(property.Name)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(KeysOf),
        _ => [],
    };

    // As somebody who knows the journal well would: the last entry and the recorded end, with the guards taken off and the seal taken out.
    private void CutOff()
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Journal, Pooling = false }.ToString());
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = """
            DROP TRIGGER entries_not_removed; DROP TRIGGER ends_go_up; DROP TRIGGER seals_not_removed;
            DELETE FROM entries WHERE sequence = 4; DELETE FROM seals;
            UPDATE ends SET entries = 3, hash = (SELECT hash FROM entries WHERE sequence = 3);
            """;
        command.ExecuteNonQuery();
    }
}
