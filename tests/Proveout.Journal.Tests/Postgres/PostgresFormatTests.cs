using Proveout.Journal.Trials.Servers;

namespace Proveout.Journal.Tests.Postgres;

public sealed class PostgresFormatTests(SharedServer shared)
{
    private readonly PostgresServer _server = shared.Server;

    [Fact]
    public async Task A_new_journal_says_its_format_and_touches_nothing_else_of_the_database()
    {
        var address = _server.NewDatabase();
        var name = PostgresServer.NameIn(address);
        _server.Execute(name, "CREATE TABLE recipes (name text)");

        await OpenAndCloseAsync(address);

        Assert.Equal(1, _server.Read<int>(name, "SELECT number FROM proveout.format"));
        Assert.Equal("recipes", _server.Read<string>(name, "SELECT string_agg(tablename, ' ') FROM pg_tables WHERE schemaname = 'public'"));
    }

    [Fact]
    public async Task A_journal_of_a_newer_format_is_refused_with_both_formats_named()
    {
        var address = _server.NewDatabase();
        var name = PostgresServer.NameIn(address);
        await OpenAndCloseAsync(address);
        _server.Execute(name, "UPDATE proveout.format SET number = 2");

        var refusal = await Assert.ThrowsAsync<JournalFormatException>(() => OpenAndCloseAsync(address));

        Assert.Equal(
            $"The journal in the database postgresql:///{name} has format 2, and this Proveout knows formats up to 1. Open it with a newer Proveout; it was left as it is.",
            refusal.Message);
    }

    [Theory]
    [InlineData("CREATE SCHEMA proveout", "has a schema named proveout that is not a journal")]
    [InlineData("CREATE SCHEMA proveout; CREATE TABLE proveout.format (number text); INSERT INTO proveout.format VALUES ('paper')", "does not say which format it has")]
    public async Task A_schema_of_something_else_is_refused(string sql, string sentence)
    {
        var address = _server.NewDatabase();
        _server.Execute(PostgresServer.NameIn(address), sql);

        var refusal = await Assert.ThrowsAsync<JournalFormatException>(() => OpenAndCloseAsync(address));

        Assert.Contains(sentence, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(0L, _server.Read<long>(PostgresServer.NameIn(address), "SELECT count(*) FROM pg_tables WHERE schemaname = 'proveout' AND tablename = 'entries'"));
    }

    [Fact]
    public async Task A_database_that_does_not_keep_texts_as_they_are_is_refused()
    {
        var address = _server.NewDatabase("ENCODING 'LATIN1' LC_COLLATE 'C' LC_CTYPE 'C' TEMPLATE template0");

        var refusal = await Assert.ThrowsAsync<JournalFormatException>(() => OpenAndCloseAsync(address));

        Assert.Contains("does not keep texts as UTF-8", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asking_whether_there_is_a_journal_makes_none()
    {
        var address = _server.NewDatabase();

        Assert.False(await JournalPlace.HasJournalAsync(address));
        Assert.False(await JournalPlace.HasJournalAsync(address));
        await OpenAndCloseAsync(address);
        Assert.True(await JournalPlace.HasJournalAsync(address));
    }

    [Fact]
    public async Task Many_may_make_the_same_journal_at_once()
    {
        var address = _server.NewDatabase();
        var journals = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => PostgresJournal.OpenAsync(address, new SteppingClock())));

        await Task.WhenAll(journals.Select((journal, number) => journal.StartBuildAsync(Drafts.Build($"{number}"))));

        Assert.Equal(8, (await journals[0].ListBuildsAsync()).Count);
        foreach (var journal in journals)
            await journal.DisposeAsync();
    }

    [Fact]
    public async Task The_same_build_started_in_many_places_at_once_is_one_build()
    {
        var address = _server.NewDatabase();
        var journals = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => PostgresJournal.OpenAsync(address, new SteppingClock())));
        var draft = Drafts.Build();

        var builds = await Task.WhenAll(Enumerable.Range(0, 40).Select(number => journals[number % 4].StartBuildAsync(draft)));

        Assert.Single(builds.Distinct());
        Assert.Equal([builds[0]], await journals[0].ListBuildsAsync());
        foreach (var journal in journals)
            await journal.DisposeAsync();
    }

    private static async Task OpenAndCloseAsync(string address)
    {
        await using var journal = await PostgresJournal.OpenAsync(address, new SteppingClock());
    }
}
