using Npgsql;

namespace Proveout.Journal.Postgres;

/// <summary>Counts of tries, in a table that is not brought to the disk.</summary>
/// <param name="database">The database.</param>
internal sealed class PostgresCounts(PostgresDatabase database) : ISharedCounts
{
    private const string Table = "tries";

    // 'PRVT' in ASCII: whoever counts holds this lock; rows alone would not do, because the first try has none yet.
    private const long CountingLock = 0x50525654;

    // Of the connections of this process one at most waits for the lock; the others are left to the journal.
    private readonly Lock _turn = new();
    private volatile bool _isMade;

    public T Change<T>(IReadOnlyList<string> names, DateTimeOffset forget, Func<IReadOnlyDictionary<string, SharedCount>, (IReadOnlyDictionary<string, SharedCount> Changed, T Answer)> change)
    {
        Make();
        lock (_turn)
            return database.Write(
                connection =>
                {
                    Run(connection, FormattableString.Invariant($"SELECT pg_advisory_xact_lock({CountingLock})"));
                    var (changed, answer) = change(Read(connection, names, forget));
                    if (changed.Count > 0)
                        Run(connection, "DELETE FROM proveout_servers.tries WHERE changed_at < $1", forget.ToUniversalTime());
                    foreach (var (name, count) in changed)
                        Keep(connection, name, count);
                    return answer;
                },
                cause => PostgresErrors.UnansweredChange(database.Name, cause));
    }

    private static void Keep(NpgsqlConnection connection, string name, SharedCount count) => Run(
        connection,
        "INSERT INTO proveout_servers.tries (name, level, changed_at) VALUES ($1, $2, $3) ON CONFLICT (name) DO UPDATE SET level = excluded.level, changed_at = excluded.changed_at",
        name, count.Level, count.At.ToUniversalTime());

    private static Dictionary<string, SharedCount> Read(NpgsqlConnection connection, IReadOnlyList<string> names, DateTimeOffset forget)
    {
        using var command = new NpgsqlCommand("SELECT name, level, changed_at FROM proveout_servers.tries WHERE name = ANY($1) AND changed_at >= $2", connection)
        {
            Parameters = { new() { Value = names.ToArray() }, new() { Value = forget.ToUniversalTime() } },
        };
        using var reader = command.ExecuteReader();
        var counts = new Dictionary<string, SharedCount>(StringComparer.Ordinal);
        while (reader.Read())
            counts.Add(reader.GetString(0), new SharedCount(reader.GetDouble(1), reader.GetFieldValue<DateTimeOffset>(2)));
        return counts;
    }

    private static void Run(NpgsqlConnection connection, string sql, params object[] values)
    {
        using var command = new NpgsqlCommand(sql, connection);
        foreach (var value in values)
            command.Parameters.Add(new NpgsqlParameter { Value = value });
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
