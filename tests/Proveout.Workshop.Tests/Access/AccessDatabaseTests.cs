using Proveout.Journal;
using Proveout.Journal.Tests.Postgres;
using Proveout.Journal.Trials.Servers;

namespace Proveout.Workshop.Tests.Access;

public sealed class AccessDatabaseTests(SharedServer shared) : AccessStoreContract
{
    private readonly SharedPlace _place = new(shared.Server);

    private string Database => PostgresServer.NameIn(_place.Address);

    [Fact]
    public void A_page_that_was_taken_away_lets_nobody_in()
    {
        var store = Open();
        Assert.Empty(store.Read().People);
        shared.Server.Execute(Database, "DELETE FROM proveout_servers.access");
        Assert.Throws<AccessException>(() => store.Read());
        Assert.Throws<AccessException>(() => store.Change(book => (book, true)));
    }

    [Fact]
    public void Who_may_read_the_record_cannot_read_who_may_come_in()
    {
        new SharedTally(JournalPlace.AccessOf(_place.Open())!.Value.Tries).Change(["name"], default, _ => (new Dictionary<string, AttemptCount>(), true));
        Open().Read();
        shared.Server.Execute(Database, "DO $$ BEGIN CREATE ROLE record_reader; EXCEPTION WHEN duplicate_object THEN NULL; END $$");
        shared.Server.Execute(Database, "GRANT USAGE ON SCHEMA proveout TO record_reader; GRANT SELECT ON ALL TABLES IN SCHEMA proveout TO record_reader");
        shared.Server.Execute(Database, "SET ROLE record_reader; SELECT * FROM proveout.builds");
        foreach (var table in new[] { "access", "tries" })
            Assert.Throws<Npgsql.PostgresException>(() => shared.Server.Execute(Database, $"SET ROLE record_reader; SELECT * FROM proveout_servers.{table}"));
    }

    protected override IAccessStore Open() => AccessKeeping.In(_place.Open())!.Store;

    protected override void Put(string text) => shared.Server.Execute(Database, $"UPDATE proveout_servers.access SET mark = gen_random_uuid(), content = '{text}'");

    protected override string Get() => shared.Server.Read<string>(Database, "SELECT content FROM proveout_servers.access");

    protected override void Close() => _place.Dispose();
}
