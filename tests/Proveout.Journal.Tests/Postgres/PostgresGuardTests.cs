using Npgsql;
using Proveout.Journal.Trials.Servers;

namespace Proveout.Journal.Tests.Postgres;

/// <summary>The database itself refuses what the journal never does.</summary>
public sealed class PostgresGuardTests(SharedServer shared) : IDisposable
{
    private readonly PostgresServer _server = shared.Server;
    private readonly string _address = shared.Server.NewDatabase();

    public void Dispose() => _server.GiveBack(_address);

    [Theory]
    [InlineData("UPDATE proveout.entries SET person = 'Bo Example' WHERE sequence = 1", "an entry is never changed")]
    [InlineData("UPDATE proveout.entries SET hash = hash", "an entry is never changed")]
    [InlineData("DELETE FROM proveout.entries WHERE sequence = 2", "an entry is never changed or removed")]
    [InlineData("TRUNCATE proveout.entries", "an entry is never changed or removed")]
    [InlineData("INSERT INTO proveout.entries SELECT build_id, 2, key, recorded, person, instrument, content, previous_hash, hash FROM proveout.entries WHERE sequence = 2 ON CONFLICT (key) DO UPDATE SET person = 'Bo Example'", "an entry is never changed")]
    [InlineData("INSERT INTO proveout.entries SELECT build_id, 4, 'k', recorded, person, instrument, content, hash, 'h' FROM proveout.entries WHERE sequence = 2", "at the end of the record")]
    [InlineData("INSERT INTO proveout.entries SELECT build_id, 3, 'k', recorded, person, instrument, content, previous_hash, 'h' FROM proveout.entries WHERE sequence = 2", "at the end of the record")]
    [InlineData("INSERT INTO proveout.entries SELECT build_id, 3, key, recorded, person, instrument, content, hash, 'h' FROM proveout.entries WHERE sequence = 2", "entries_key_key")]
    [InlineData("UPDATE proveout.builds SET serial = '002'", "a build is never changed")]
    [InlineData("DELETE FROM proveout.builds", "a build is never changed or removed")]
    [InlineData("TRUNCATE proveout.builds CASCADE", "never")]
    [InlineData("UPDATE proveout.ends SET entries = 1", "follows its entries")]
    [InlineData("UPDATE proveout.ends SET entries = 3", "follows its entries")]
    [InlineData("UPDATE proveout.ends SET hash = 'h'", "follows its entries")]
    [InlineData("DELETE FROM proveout.ends", "never removed")]
    [InlineData("TRUNCATE proveout.ends", "never removed")]
    [InlineData("UPDATE proveout.photos SET bytes = '\\x00'", "a photograph is never changed")]
    [InlineData("DELETE FROM proveout.photos", "a photograph is never changed or removed")]
    [InlineData("TRUNCATE proveout.photos", "a photograph is never changed or removed")]
    [InlineData("UPDATE proveout.seals SET person = 'Bo Example'", "a seal is never changed")]
    [InlineData("DELETE FROM proveout.seals", "a seal is never changed or removed")]
    [InlineData("TRUNCATE proveout.seals", "a seal is never changed or removed")]
    public async Task The_database_refuses_to_change_what_is_recorded(string sql, string reason)
    {
        await using var journal = await PostgresJournal.OpenAsync(_address, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        await journal.AppendAsync(build.Id, Drafts.Note("first"));
        var last = await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));
        using var key = SealKey.Make();
        await journal.SealAsync(build.Id, key, "Ada Example");

        var refusal = Assert.Throws<PostgresException>(() => _server.Execute(PostgresServer.NameIn(_address), sql));

        Assert.Contains(reason, refusal.MessageText, StringComparison.Ordinal);
        Assert.Equal(new ChainWhole(2, last.Hash), await journal.VerifyAsync(build.Id));
    }

    [Theory]
    [InlineData("ALTER TABLE proveout.entries DISABLE TRIGGER entries_kept", "the guard entries_kept of the tables is missing or switched off")]
    [InlineData("DROP TRIGGER ends_go_up ON proveout.ends", "the guard ends_go_up of the tables is missing or switched off")]
    [InlineData("ALTER TABLE proveout.photos DISABLE TRIGGER ALL; UPDATE proveout.photos SET bytes = '\\x00'", "cannot be read as it was kept")]
    [InlineData("ALTER TABLE proveout.ends DISABLE TRIGGER ALL; DELETE FROM proveout.ends", "has no end")]
    public async Task A_guard_that_was_taken_away_and_what_was_done_without_it_is_found(string sql, string finding)
    {
        await using var journal = await PostgresJournal.OpenAsync(_address, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        await journal.AppendAsync(build.Id, Drafts.Photo(1, 2, 3));
        Assert.Empty(await journal.InspectAsync());

        _server.Execute(PostgresServer.NameIn(_address), sql);

        Assert.Contains(await journal.InspectAsync(), found => found.Contains(finding, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_entry_altered_behind_the_guards_is_named_by_the_chain()
    {
        await using var journal = await PostgresJournal.OpenAsync(_address, new SteppingClock());
        var build = await journal.StartBuildAsync(Drafts.Build());
        await journal.AppendAsync(build.Id, Drafts.Note("first"));
        await journal.AppendAsync(build.Id, Drafts.Note("second"));

        _server.Execute(PostgresServer.NameIn(_address), "ALTER TABLE proveout.entries DISABLE TRIGGER ALL; UPDATE proveout.entries SET person = 'Bo Example' WHERE sequence = 1");

        Assert.Equal(1, Assert.IsType<ChainBroken>(await journal.VerifyAsync(build.Id)).Sequence);
    }
}
