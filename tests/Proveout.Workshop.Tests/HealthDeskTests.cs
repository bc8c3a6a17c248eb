using Microsoft.Data.Sqlite;
using Proveout.Journal;

namespace Proveout.Workshop.Tests;

public sealed class HealthDeskTests : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-health-");
    private SqliteJournal _journal = null!;

    private string Path => System.IO.Path.Combine(_folder.FullName, "journal.db");

    public async ValueTask InitializeAsync() => _journal = await SqliteJournal.OpenAsync(Path, TimeProvider.System, TimeSpan.FromSeconds(1));

    public async ValueTask DisposeAsync()
    {
        await _journal.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    [Fact]
    public async Task A_journal_that_reads_and_writes_on_a_disk_with_space_is_ready()
    {
        var health = await new HealthDesk(_journal, Path, TimeProvider.System).LookAsync(default);

        Assert.True(health.IsReady);
        Assert.Equal(["journal-read", "journal-write", "disk-space"], health.Findings.Select(finding => finding.Name));
        Assert.Matches(@"^\d+\.\d+\.\d+$", health.Version);
    }

    [Fact]
    public async Task To_look_enters_nothing()
    {
        var build = await _journal.StartBuildAsync(new BuildDraft(Guid.NewGuid(), "P-7", "pennywort", new string('a', 64), "Ada"));
        var before = (await _journal.ReadAsync(build.Id)).Count;

        await new HealthDesk(_journal, Path, TimeProvider.System).LookAsync(default);

        Assert.Equal(before, (await _journal.ReadAsync(build.Id)).Count);
        Assert.Single(await _journal.ListBuildsAsync());
    }

    [Fact]
    public async Task A_journal_that_another_program_holds_can_be_read_and_not_written()
    {
        using var holder = Hold();

        var health = await new HealthDesk(_journal, Path, TimeProvider.System).LookAsync(default);

        Assert.False(health.IsReady);
        Assert.Equal([true, false, true], health.Findings.Select(finding => finding.IsGood));
        Assert.Equal("The journal cannot be written.", health.Findings[1].Sentence);
    }

    [Fact]
    public async Task A_journal_that_does_not_answer_is_not_waited_for()
    {
        // It waits far longer for the other program than is waited for it, however busy the computer is.
        await using var patient = await SqliteJournal.OpenAsync(Path, TimeProvider.System, TimeSpan.FromMinutes(5));
        using var holder = Hold();

        var health = await new HealthDesk(patient, Path, TimeProvider.System, patience: TimeSpan.FromMilliseconds(50)).LookAsync(default);

        Assert.StartsWith("The journal did not answer within", health.Findings[1].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task However_many_ask_one_looks()
    {
        using var holder = Hold();
        var desk = new HealthDesk(_journal, Path, TimeProvider.System);

        var looks = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => desk.LookAsync(default)));

        Assert.All(looks, look => Assert.Same(looks[0], look));
    }

    [Fact]
    public async Task A_journal_whose_file_is_gone_is_not_ready_and_not_made_anew()
    {
        var elsewhere = System.IO.Path.Combine(_folder.FullName, "gone.db");

        var health = await new HealthDesk(_journal, elsewhere, TimeProvider.System).LookAsync(default);

        Assert.Equal([false, false, true], health.Findings.Select(finding => finding.IsGood));
        Assert.Equal("The file of the journal is gone.", health.Findings[0].Sentence);
        Assert.False(File.Exists(elsewhere));
    }

    [Theory]
    [InlineData(100_000_000, true, "100 MB are free on the disk of the journal.")]
    [InlineData(99_999_999, false, "Only 99 MB are free on the disk of the journal: photographs and recordings may be refused.")]
    public async Task A_disk_with_less_than_100_MB_is_not_ready(long free, bool isGood, string sentence)
    {
        var health = await new HealthDesk(_journal, Path, TimeProvider.System, _ => free).LookAsync(default);

        Assert.Equal((isGood, sentence), (health.Findings[^1].IsGood, health.Findings[^1].Sentence));
        Assert.Equal(isGood, health.IsReady);
    }

    [Fact]
    public async Task A_disk_that_is_away_is_a_finding()
    {
        var health = await new HealthDesk(_journal, Path, TimeProvider.System, _ => throw new DriveNotFoundException("/srv/journals")).LookAsync(default);

        Assert.Equal("The disk of the journal cannot be asked for its space.", health.Findings[^1].Sentence);
    }

    [Fact]
    public async Task What_is_told_names_no_path()
    {
        using var holder = Hold();

        var text = HealthText.Write(await new HealthDesk(_journal, Path, TimeProvider.System).LookAsync(default));

        Assert.DoesNotContain(_folder.Name, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_written_is_read_back()
    {
        var health = await new HealthDesk(_journal, null, TimeProvider.System).LookAsync(default);

        var read = HealthText.Read(HealthText.Write(health))!;

        Assert.Equal(health.Version, read.Version);
        Assert.Equal(health.Findings, read.Findings);
        Assert.Null(HealthText.Read("{}"));
        Assert.Null(HealthText.Read("<!DOCTYPE html>"));
    }

    // What another program does that is writing.
    private SqliteConnection Hold()
    {
        var connection = new SqliteConnection($"Data Source={Path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "BEGIN IMMEDIATE";
        command.ExecuteNonQuery();
        return connection;
    }
}
