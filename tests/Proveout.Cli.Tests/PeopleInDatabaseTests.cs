using Proveout.Journal.Trials.Servers;
using Proveout.Workshop;

namespace Proveout.Cli.Tests;

/// <summary>Who may come in at the benches of a database, as typed.</summary>
public sealed class PeopleInDatabaseTests(DatabaseTests.OwnServer own) : IClassFixture<DatabaseTests.OwnServer>, IDisposable
{
    private const string Password = "seven herons wade upstream";
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task Who_is_added_is_listed_before_and_after_a_bench_was_served()
    {
        var address = NewDatabase();
        Assert.Contains("Nobody yet.", (await Run.OfAsync("people", "list", "--journal", address)).Output, StringComparison.Ordinal);
        Assert.Equal(0, (await AddAsync("Mara Lindt", address)).Exit);
        await using (var workplace = await Workplace.OpenAsync(new MachineFiles(Places.Catalogue), [], address, default))
            workplace.Desks.FormKeys!.Alone(() => { });
        Assert.Matches(@"Mara Lindt\s+builder\s+password or join code\s+no\s+0", (await Run.OfAsync("people", "list", "--journal", address)).Output);
        Assert.DoesNotContain(Password, own.Server!.Read<string>(PostgresServer.NameIn(address), "SELECT content FROM proveout_servers.access"), StringComparison.Ordinal);
        Assert.Equal("Nothing yet.\n", (await Run.OfAsync("people", "access-notes", "--journal", address)).Output.ReplaceLineEndings("\n"));
        Assert.Equal(2, (await Run.OfAsync("people", "second-factor-off", "Mara Lindt", "--journal", address)).Exit);
    }

    [Fact]
    public async Task People_of_a_file_are_taken_in_and_the_file_stays_and_so_does_who_is_there()
    {
        var (address, file) = (NewDatabase(), _folder.At("old.db"));
        await AddAsync("Mara Lindt", file);
        await AddAsync("Ida Brandt", file);
        await Run.OfAsync("people", "join", "Ida Brandt", "--role", "reader", "--journal", address);
        var before = await File.ReadAllTextAsync(file + ".access");

        var taken = await Run.OfAsync("people", "take-in", "--from", file, "--journal", address);
        var again = await Run.OfAsync("people", "take-in", "--from", file, "--journal", address, "--json");
        var back = await Run.OfAsync("people", "take-in", "--from", address, "--journal", _folder.At("new.db"));

        Assert.Equal("May sign in here now, as there: Mara Lindt (builder).\nLeft as they are here: Ida Brandt (builder).\n", taken.Output.ReplaceLineEndings("\n"));
        Assert.Contains("\"people\": []", again.Output, StringComparison.Ordinal);
        Assert.Contains("Ida Brandt (reader), Mara Lindt (builder)", back.Output, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(file + ".access"));
        Assert.Equal(Of(AccessFile.Beside(file)), Of(AccessFile.Beside(_folder.At("new.db"))));
    }

    [Fact]
    public async Task A_journal_without_people_is_said_to_have_none()
    {
        var run = await Run.OfAsync("people", "take-in", "--from", _folder.At("none.db"), "--journal", _folder.At("new.db"));
        Assert.Equal((2, ""), (run.Exit, run.Output));
        Assert.Contains("Nobody may sign in there", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder.At("none.db.access")));
    }

    [Fact]
    public async Task A_copied_journal_says_that_people_are_not_copied()
    {
        var (address, file) = (NewDatabase(), _folder.At("copied.db"));
        await (await Journal.JournalPlace.OpenAsync(file, TimeProvider.System)).DisposeAsync();
        await AddAsync("Mara Lindt", file);
        var run = await Run.OfAsync("copy-journal", "--from", file, "--to", address);
        Assert.Contains("Who may sign in is not copied with it; `proveout people take-in", run.Output, StringComparison.Ordinal);
        Assert.Contains("Nobody yet.", (await Run.OfAsync("people", "list", "--journal", address)).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bench_that_finds_nobody_in_the_database_names_the_people_of_the_file_of_before()
    {
        var address = NewDatabase();
        Directory.CreateDirectory(_folder.At("proveout"));
        await AddAsync("Mara Lindt", _folder.At(Path.Combine("proveout", "journal.db")));
        using var program = ProgramProcess.StartWith(_folder.At(""), "serve", "pennywort", "--name", "localhost", "--journal", address);
        var lines = new List<string>();
        while (lines.Count < 4 && await program.Output.ReadLineAsync() is { } line)
            lines.Add(line);
        program.Interrupt();
        Assert.Equal(130, await program.ExitAsync());
        Assert.Contains("`proveout people add NAME --role builder --journal ADDRESS`", lines[2], StringComparison.Ordinal);
        Assert.Contains("has 1 person: `proveout people take-in --journal ADDRESS` takes them in", lines[3], StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private static string Of(AccessFile file) => string.Join('\n', file.Read().People.Where(person => person.Name == "Mara Lindt"));

    private static Task<Run> AddAsync(string name, string journal) => Run.WithInputAsync(Password + "\n", "people", "add", name, "--role", "builder", "--journal", journal);

    private string NewDatabase()
    {
        Assert.SkipUnless(own.Server is not null, "PostgreSQL is not installed; ./test installs it where it may.");
        return own.Server!.NewDatabase();
    }
}
