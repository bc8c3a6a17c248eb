using Npgsql;

namespace Proveout.Journal.Postgres;

/// <summary>The page of who may come in, in one row: whoever changes it holds the row.</summary>
/// <param name="database">The database.</param>
internal sealed class PostgresPage(PostgresDatabase database) : ISharedPage
{
    private const string Table = "access";

    // Of the connections of this process one at most waits for the row; the others are left to the journal.
    private readonly Lock _turn = new();
    private volatile bool _isMade;

    public string Place => database.Name;

    // One statement sees one moment, so that it needs no transaction and one way there and back.
    public SharedText? Read(SharedText? known)
    {
        Make();
        return database.Ask(connection => Read(connection, "SELECT mark, CASE WHEN mark = $1 THEN NULL ELSE content END FROM proveout_servers.access", known));
    }

    public T Change<T>(Func<SharedText?, (string? Content, T Answer)> change)
    {
        Make();
        lock (_turn)
            return database.Write(
                connection =>
                {
                    var (content, answer) = change(Read(connection, "SELECT mark, CASE WHEN mark = $1 THEN NULL ELSE content END FROM proveout_servers.access FOR UPDATE", null));
                    if (content is not null)
                        Write(connection, content);
                    return answer;
                },
                cause => PostgresErrors.UnansweredChange(database.Name, cause));
    }

    private static SharedText? Read(NpgsqlConnection connection, string sql, SharedText? known)
    {
        using var command = new NpgsqlCommand(sql, connection) { Parameters = { new() { Value = known?.Mark ?? Guid.Empty } } };
        using var reader = command.ExecuteReader();
        return !reader.Read() ? null : reader.IsDBNull(1) ? known : new SharedText(reader.GetGuid(0), reader.GetString(1));
    }

    private static void Write(NpgsqlConnection connection, string content)
    {
        using var command = new NpgsqlCommand("UPDATE proveout_servers.access SET mark = $1, content = $2", connection) { Parameters = { new() { Value = Guid.NewGuid() }, new() { Value = content } } };
        command.ExecuteNonQuery();
    }

    private void Make()
    {
        if (_isMade)
            return;
        ServersSchema.Make(database, Table, sql => sql.Access);
        _isMade = true;
    }
}
