using Npgsql;
using Proveout.Journal.Store;

namespace Proveout.Journal.Postgres;

/// <summary>Keys of forms in a schema of their own beside the journal, which only the owner of the tables reads.</summary>
/// <param name="database">The database.</param>
internal sealed class PostgresKeys(PostgresDatabase database) : ISharedKeys
{
    // 'PRVK' in ASCII: whoever makes the table or the first key holds this lock.
    private const long KeysLock = 0x5052564B;

    private static readonly SqlText Sql = new("Postgres");

    public IReadOnlyList<string> Read() => database.Read(IReadOnlyList<string> (NpgsqlConnection connection) =>
    {
        if (!IsMade(connection))
            return [];
        using var command = new NpgsqlCommand("SELECT content FROM proveout_servers.form_keys ORDER BY ordinal", connection);
        using var reader = command.ExecuteReader();
        var texts = new List<string>();
        while (reader.Read())
            texts.Add(reader.GetString(0));
        return texts;
    });

    public void Add(string name, string text) => database.Write((NpgsqlConnection connection) =>
    {
        using var command = new NpgsqlCommand("INSERT INTO proveout_servers.form_keys (name, content) VALUES ($1, $2)", connection);
        command.Parameters.Add(new NpgsqlParameter { Value = name });
        command.Parameters.Add(new NpgsqlParameter { Value = text });
        return command.ExecuteNonQuery();
    });

    public void Alone(Action work)
    {
        database.Write((NpgsqlConnection connection) =>
        {
            Hold(connection);
            if (!IsMade(connection))
                Run(connection, Sql.Keys);
            return true;
        });
        // The work has connections of its own, and finds the table that was committed.
        database.Write((NpgsqlConnection connection) =>
        {
            Hold(connection);
            work();
            return true;
        });
    }

    private static void Hold(NpgsqlConnection connection) => Run(connection, FormattableString.Invariant($"SELECT pg_advisory_xact_lock({KeysLock})"));

    private static bool IsMade(NpgsqlConnection connection)
    {
        using var command = new NpgsqlCommand("SELECT to_regclass('proveout_servers.form_keys') IS NOT NULL", connection);
        return command.ExecuteScalar() is true;
    }

    private static void Run(NpgsqlConnection connection, string sql)
    {
        using var command = new NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }
}
