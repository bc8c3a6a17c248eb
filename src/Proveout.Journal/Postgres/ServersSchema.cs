using Npgsql;
using Proveout.Journal.Store;

namespace Proveout.Journal.Postgres;

/// <summary>The schema of what servers share beside the record; each part of it is made by the first who needs it.</summary>
internal static class ServersSchema
{
    // 'PRVK' in ASCII: whoever makes a part of it, or the first key of forms, holds this lock.
    private const long MakingLock = 0x5052564B;

    private static readonly SqlText Sql = new("Postgres");

    /// <summary>Makes a part where it is not, once for all servers.</summary>
    /// <param name="database">The database.</param>
    /// <param name="table">A table of the part.</param>
    /// <param name="part">The part's SQL.</param>
    public static void Make(PostgresDatabase database, string table, Func<SqlText, string> part)
    {
        if (database.Ask(connection => Has(connection, table)))
            return;
        database.Write((NpgsqlConnection connection) =>
        {
            Hold(connection);
            if (!Has(connection, table))
                Run(connection, Sql.Servers + part(Sql));
            return true;
        });
    }

    /// <summary>Waits until nobody else makes anything here, and keeps others waiting until the end of the transaction.</summary>
    public static void Hold(NpgsqlConnection connection) => Run(connection, FormattableString.Invariant($"SELECT pg_advisory_xact_lock({MakingLock})"));

    // Read as any table is: to_regclass answers from what the connection remembers, which in the transaction that waited is from before another made it.
    private static bool Has(NpgsqlConnection connection, string table)
    {
        const string Question = "SELECT EXISTS (SELECT FROM pg_class JOIN pg_namespace space ON space.oid = relnamespace WHERE nspname = 'proveout_servers' AND relname = $1)";
        using var command = new NpgsqlCommand(Question, connection) { Parameters = { new() { Value = table } } };
        return command.ExecuteScalar() is true;
    }

    private static void Run(NpgsqlConnection connection, string sql)
    {
        using var command = new NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }
}
