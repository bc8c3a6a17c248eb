using Npgsql;
using Proveout.Journal.Trials;
using Proveout.Journal.Trials.Servers;

namespace Proveout.Journal.Tests.Postgres;

public sealed class PostgresUnavailableTests(SharedServer shared)
{
    private readonly PostgresServer _server = shared.Server;

    [Fact]
    public async Task A_server_that_does_not_run_gives_a_sentence_without_anything_that_lets_anybody_in()
    {
        var refusal = await RefusalAsync("postgresql://workshop@localhost:1/journal");

        Assert.Equal(
            "The database postgresql://localhost:1/journal cannot be reached: nothing was read or recorded. See that its server runs and that the address is right, then try again.",
            refusal.Message);
        Assert.DoesNotContain(PostgresServer.Password, refusal.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_that_is_not_there_gives_a_sentence() =>
        Assert.StartsWith("There is no database postgresql:///nowhere. Make it", (await RefusalAsync(_server.AddressOf("nowhere"))).Message, StringComparison.Ordinal);

    [Fact]
    public async Task A_user_who_is_not_let_in_is_told_where_the_password_belongs()
    {
        var refusal = await RefusalAsync(_server.AddressOf("postgres").Replace("workshop@", "stranger@", StringComparison.Ordinal));

        Assert.Contains("the password as PGPASSWORD in the environment or in the password file", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(PostgresServer.Password, refusal.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_password_is_taken_from_a_password_file_and_asked_for_where_there_is_none()
    {
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "passwords");
        await File.WriteAllTextAsync(file, $"*:*:*:workshop:{PostgresServer.Password}\n");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        var address = _server.NewDatabase();

        using var known = WriterProcess.Open($"{address}&passfile={file}", "env", "-u", "PGPASSWORD");
        using var unknown = WriterProcess.Open($"{address}&passfile=/dev/null", "env", "-u", "PGPASSWORD");

        Assert.Equal(["opened"], await known.ReadToEndAsync());
        Assert.Contains("the password as PGPASSWORD in the environment or in the password file", (await unknown.ReadToEndAsync())[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_user_who_may_not_make_tables_gives_a_sentence()
    {
        var address = _server.NewDatabase();
        var name = PostgresServer.NameIn(address);
        _server.Execute(name, $"CREATE ROLE guest_{name} LOGIN PASSWORD '{PostgresServer.Password}'");

        var refusal = await RefusalAsync(address.Replace("workshop@", $"guest_{name}@", StringComparison.Ordinal));

        Assert.Contains("This user may not use the journal in the database", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_held_by_another_program_gives_a_sentence_until_it_is_let_go_and_other_builds_go_on()
    {
        var address = _server.NewDatabase();
        await using var journal = await PostgresJournal.OpenAsync(address, new SteppingClock(), TimeSpan.FromSeconds(1));
        var held = await journal.StartBuildAsync(Drafts.Build("1"));
        var free = await journal.StartBuildAsync(Drafts.Build("2"));
        var draft = Drafts.Note("patience");
        await using (var holder = _server.Connect(PostgresServer.NameIn(address)))
        {
            await using var transaction = await holder.BeginTransactionAsync();
            await using var command = new NpgsqlCommand($"SELECT FROM proveout.ends WHERE build_id = '{held.Id}' FOR UPDATE", holder);
            await command.ExecuteNonQueryAsync();

            var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => journal.AppendAsync(held.Id, draft));
            Assert.Contains("is held by another program. Nothing was recorded", refusal.Message, StringComparison.Ordinal);
            Assert.Equal(1, (await journal.AppendAsync(free.Id, Drafts.Note("unhindered"))).Sequence);
            Assert.Empty(await journal.ReadAsync(held.Id));
        }
        Assert.Equal(1, (await journal.AppendAsync(held.Id, draft)).Sequence);
    }

    [Fact]
    public async Task A_database_set_to_read_only_gives_a_sentence()
    {
        var address = _server.NewDatabase();
        await using (await PostgresJournal.OpenAsync(address, new SteppingClock()))
        {
        }
        var name = PostgresServer.NameIn(address);
        _server.Execute("postgres", $"ALTER DATABASE {name} SET default_transaction_read_only = on");

        await using var journal = await PostgresJournal.OpenAsync(address, new SteppingClock());
        var refusal = await Assert.ThrowsAsync<JournalUnavailableException>(() => journal.StartBuildAsync(Drafts.Build()));

        Assert.Contains("only answers questions", refusal.Message, StringComparison.Ordinal);
        Assert.Empty(await journal.ListBuildsAsync());
    }

    [Fact]
    public async Task A_server_started_anew_between_two_entries_is_not_noticed()
    {
        using var server = PostgresServer.Begin()!;
        await using var journal = await PostgresJournal.OpenAsync(server.NewDatabase(), new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        await Task.WhenAll(Enumerable.Range(0, 20).Select(number => journal.AppendAsync(build.Id, Drafts.Note($"{number}"))));
        server.Stop();
        server.Start();

        Assert.Equal(21, (await journal.AppendAsync(build.Id, Drafts.Note("after"))).Sequence);
    }

    [Theory]
    [InlineData("fsync")]
    [InlineData("full_page_writes")]
    public async Task A_server_that_does_not_wait_for_its_disk_is_refused(string setting)
    {
        using var server = PostgresServer.Begin()!;
        var address = server.NewDatabase();
        server.Execute("postgres", $"ALTER SYSTEM SET {setting} = off");
        server.Stop();
        server.Start();

        var refusal = await RefusalAsync(address);

        Assert.Contains($"runs with {setting} off", refusal.Message, StringComparison.Ordinal);
    }

    private static Task<JournalUnavailableException> RefusalAsync(string address) =>
        Assert.ThrowsAsync<JournalUnavailableException>(() => PostgresJournal.OpenAsync(address, new SteppingClock()));
}
