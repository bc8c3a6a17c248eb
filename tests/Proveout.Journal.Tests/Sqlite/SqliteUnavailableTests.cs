using Proveout.Journal.Trials;

namespace Proveout.Journal.Tests.Sqlite;

public sealed class SqliteUnavailableTests : IDisposable
{
    private const string Root = "root", Nobody = "65534";
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_file_in_the_place_of_the_folder_gives_the_sentence()
    {
        var file = Path.Combine(_folder.Path, "records");
        await File.WriteAllTextAsync(file, "not a folder");
        var path = Path.Combine(file, "journal.db");

        var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => SqliteJournal.OpenAsync(path, new SteppingClock()));

        Assert.Equal(Sentence(path), refusal.Message);
    }

    [Fact]
    public async Task A_folder_in_the_place_of_the_file_gives_the_sentence()
    {
        var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => SqliteJournal.OpenAsync(_folder.Path, new SteppingClock()));

        Assert.Equal(Sentence(_folder.Path), refusal.Message);
    }

    [Fact]
    public async Task A_read_only_folder_gives_the_sentence_to_a_real_process()
    {
        _folder.MakeReadOnly();
        using var writer = OpenWithoutPrivilege(_folder.Journal);

        Assert.Equal([nameof(JournalUnavailableException), Sentence(_folder.Journal)], await writer.ReadToEndAsync());
        Assert.Equal(1, writer.ExitCode);
    }

    [Fact]
    public async Task A_journal_that_may_only_be_read_gives_the_sentence_to_a_real_process()
    {
        await using (await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock()))
        {
        }
        _folder.MakeReadOnly();
        using var writer = OpenWithoutPrivilege(_folder.Journal);

        Assert.Equal([nameof(JournalUnavailableException), Sentence(_folder.Journal)], await writer.ReadToEndAsync());
    }

    [Fact]
    public async Task A_journal_held_by_another_program_gives_a_sentence_and_records_nothing_until_it_is_let_go()
    {
        await using var journal = await SqliteJournal.OpenAsync(_folder.Journal, new SteppingClock(), TimeSpan.FromSeconds(1));
        var build = await journal.StartBuildAsync(Drafts.Build());
        var draft = Drafts.Note("patience");
        using (RawFile.Hold(_folder.Journal))
        {
            var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => journal.AppendAsync(build.Id, draft));

            Assert.Contains($"{_folder.Journal} is held by another program. Nothing was recorded", refusal.Message, StringComparison.Ordinal);
            Assert.Empty(await journal.ReadAsync(build.Id));
        }
        Assert.Equal(1, (await journal.AppendAsync(build.Id, draft)).Sequence);
    }

    private static string Sentence(string path) =>
        $"The journal {path} cannot be opened for writing. Check that its folder exists, is a folder and may be written to by you, or choose another path.";

    // Permissions do not bind root, as which containers often run: there the process is started as nobody.
    private static WriterProcess OpenWithoutPrivilege(string path)
    {
        if (Environment.UserName != Root)
            return WriterProcess.Open(path);
        Assert.SkipUnless(File.Exists("/usr/bin/setpriv"), "Run as root, and setpriv (util-linux) is not installed.");
        return WriterProcess.Open(path, "/usr/bin/setpriv", $"--reuid={Nobody}", $"--regid={Nobody}", "--clear-groups");
    }
}
