using Microsoft.Data.Sqlite;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Sqlite;

/// <summary>Rows in and out of the tables, within the transaction of the connection.</summary>
internal static class SqliteRows
{
    // SQLite takes a negative LIMIT as none.
    private const int NoLimit = -1;

    public static StoredBuild? FindBuild(SqliteConnection connection, Guid id) =>
        Query(connection, "find-build", Build, ("$build", id.ToString("D"))).SingleOrDefault();

    public static StoredBuild? FindBuild(SqliteConnection connection, string machineName, string serial) =>
        Query(connection, "find-build-by-serial", Build, ("$machine_name", machineName), ("$serial", serial)).SingleOrDefault();

    public static IEnumerable<StoredBuild> ListBuilds(SqliteConnection connection) => Query(connection, "list-builds", Build);

    public static void Add(SqliteConnection connection, StoredBuild build) => Execute(connection, "add-build",
        ("$id", build.Id), ("$serial", build.Serial), ("$machine_name", build.MachineName),
        ("$machine_fingerprint", build.MachineFingerprint), ("$builder", build.Builder), ("$started", build.Started),
        ("$hash", build.Hash));

    public static IEnumerable<StoredEntry> Entries(SqliteConnection connection, Guid build, long after) =>
        Query(connection, "read-entries", Entry, ("$build", build.ToString("D")), ("$after", after), ("$limit", NoLimit));

    public static StoredEntry? FindEntry(SqliteConnection connection, Guid build, long sequence) =>
        Query(connection, "read-entries", Entry, ("$build", build.ToString("D")), ("$after", sequence - 1), ("$limit", 1))
            .SingleOrDefault(entry => entry.Sequence == sequence);

    public static StoredEntry? FindEntry(SqliteConnection connection, Guid key) =>
        Query(connection, "find-entry-by-key", Entry, ("$key", key.ToString("D"))).SingleOrDefault();

    public static StoredEntry? FindFileEntry(SqliteConnection connection, Guid build, string kind, string sha256) =>
        Query(connection, "find-file-entry", Entry, ("$build", build.ToString("D")), ("$kind", kind), ("$sha256", sha256)).SingleOrDefault();

    public static void Add(SqliteConnection connection, StoredEntry entry) => Execute(connection, "add-entry",
        ("$build", entry.BuildId), ("$sequence", entry.Sequence), ("$key", entry.Key), ("$recorded", entry.Recorded),
        ("$person", entry.Person), ("$instrument", entry.Instrument), ("$content", entry.Content),
        ("$previous_hash", entry.PreviousHash), ("$hash", entry.Hash));

    public static StoredEnd? FindEnd(SqliteConnection connection, Guid build) =>
        Query(connection, "find-end", row => new StoredEnd(row.GetInt64(0), Bytes(row, 1)), ("$build", build.ToString("D")))
            .SingleOrDefault();

    public static byte[]? FindFile(SqliteConnection connection, string sha256) =>
        Query(connection, "find-file", row => Bytes(row, 0), ("$sha256", sha256)).SingleOrDefault();

    public static void Keep(SqliteConnection connection, string sha256, ReadOnlyMemory<byte> bytes)
    {
        if (!Query(connection, "has-file", row => row.GetInt64(0), ("$sha256", sha256)).Any())
            Execute(connection, "add-file", ("$sha256", sha256), ("$bytes", bytes.ToArray()));
    }

    private static StoredBuild Build(SqliteDataReader row) => new(
        Bytes(row, 0), Bytes(row, 1), Bytes(row, 2), Bytes(row, 3), Bytes(row, 4), Bytes(row, 5), Bytes(row, 6));

    private static StoredEntry Entry(SqliteDataReader row) => new(
        Bytes(row, 0), row.GetInt64(1), Bytes(row, 2), Bytes(row, 3), Bytes(row, 4), Bytes(row, 5), Bytes(row, 6),
        Bytes(row, 7), Bytes(row, 8));

    private static byte[] Bytes(SqliteDataReader row, int column) => row.GetFieldValue<byte[]>(column);

    private static IEnumerable<T> Query<T>(
        SqliteConnection connection, string statement, Func<SqliteDataReader, T> read, params (string Name, object Value)[] parameters)
    {
        using var command = Command(connection, statement, parameters);
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return read(reader);
    }

    private static void Execute(SqliteConnection connection, string statement, params (string Name, object Value)[] parameters)
    {
        using var command = Command(connection, statement, parameters);
        command.ExecuteNonQuery();
    }

    private static SqliteCommand Command(SqliteConnection connection, string statement, (string Name, object Value)[] parameters)
    {
        var command = connection.CreateCommand();
        command.CommandText = Sql.Statement(statement);
        foreach (var (name, value) in parameters)
            command.Parameters.AddWithValue(name, value);
        return command;
    }
}
