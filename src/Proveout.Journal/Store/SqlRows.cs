using System.Data.Common;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Store;

/// <summary>
/// Rows in and out of the tables of a database that speaks SQL, within the transaction of the connection. Each database has its own statements, under
/// the same names and with the same parameters.
/// </summary>
/// <param name="connection">In a transaction.</param>
/// <param name="sql">The statements.</param>
/// <param name="endStatement">What finds an end; where a database locks single rows, the one for writing locks it.</param>
internal sealed class SqlRows(DbConnection connection, SqlText sql, string endStatement = "find-end") : IJournalRows
{
    private const int NoLimit = -1;

    public StoredBuild? FindBuild(Guid id) =>
        Query("find-build", Build, ("build", id.ToString("D"))).SingleOrDefault();

    public StoredBuild? FindBuild(string machineName, string serial) =>
        Query("find-build-by-serial", Build, ("machine_name", machineName), ("serial", serial)).SingleOrDefault();

    public IEnumerable<StoredBuild> ListBuilds() => Query("list-builds", Build);

    public void Add(StoredBuild build) => Execute("add-build",
        ("id", build.Id), ("serial", build.Serial), ("machine_name", build.MachineName),
        ("machine_fingerprint", build.MachineFingerprint), ("builder", build.Builder), ("started", build.Started),
        ("hash", build.Hash));

    public IEnumerable<StoredEntry> Entries(Guid build, long after) =>
        Query("read-entries", Entry, ("build", build.ToString("D")), ("after", after), ("limit", NoLimit));

    public StoredEntry? FindEntry(Guid build, long sequence) =>
        Query("read-entries", Entry, ("build", build.ToString("D")), ("after", sequence - 1), ("limit", 1))
            .SingleOrDefault(entry => entry.Sequence == sequence);

    public StoredEntry? FindEntry(Guid key) =>
        Query("find-entry-by-key", Entry, ("key", key.ToString("D"))).SingleOrDefault();

    public StoredEntry? FindFileEntry(Guid build, string kind, string sha256) =>
        Query("find-file-entry", Entry, ("build", build.ToString("D")), ("kind", kind), ("sha256", sha256)).SingleOrDefault();

    public void Add(StoredEntry entry) => Execute("add-entry",
        ("build", entry.BuildId), ("sequence", entry.Sequence), ("key", entry.Key), ("recorded", entry.Recorded),
        ("person", entry.Person), ("instrument", entry.Instrument), ("content", entry.Content),
        ("previous_hash", entry.PreviousHash), ("hash", entry.Hash));

    public StoredEnd? FindEnd(Guid build) =>
        Query(endStatement, row => new StoredEnd(row.GetInt64(0), Bytes(row, 1)), ("build", build.ToString("D")))
            .SingleOrDefault();

    public JournalSize Size() => Query("size", row => new JournalSize(row.GetInt64(0), row.GetInt64(1))).Single();

    public IEnumerable<(Guid Build, long Entries)> ListEnds() =>
        Query("list-ends", row => (Guid.TryParseExact(row.GetString(0), "D", out var id) ? id : Guid.Empty, row.GetInt64(1))).Where(end => end.Item1 != Guid.Empty);

    public byte[]? FindFile(string sha256) =>
        Query("find-file", row => Bytes(row, 0), ("sha256", sha256)).SingleOrDefault();

    public void Keep(string sha256, ReadOnlyMemory<byte> bytes)
    {
        if (!Query("has-file", row => row.GetInt64(0), ("sha256", sha256)).Any())
            Execute("add-file", ("sha256", sha256), ("bytes", bytes.ToArray()));
    }

    public IEnumerable<Seal> Seals(Guid build) => Query("read-seals", Seal, ("build", build.ToString("D")));

    public void Add(Seal seal) => Execute("add-seal",
        ("build", seal.BuildId.ToString("D")), ("entries", seal.Entries), ("hash", seal.Hash), ("sealed", FieldText.Write(seal.Sealed)),
        ("person", seal.Person), ("public_key", seal.PublicKey), ("signature", seal.Signature));

    private static Seal Seal(DbDataReader row)
    {
        try
        {
            return new Seal(
                FieldText.ReadGuid(Bytes(row, 0)), row.GetInt32(1), row.GetString(2), FieldText.ReadTime(Bytes(row, 3)), row.GetString(4),
                row.GetString(5), row.GetString(6));
        }
        catch (Exception cause) when (cause is FormatException or OverflowException)
        {
            throw new JournalDamagedException(
                $"A seal of build {FieldText.Read(Bytes(row, 0))} cannot be read: it is not as Proveout writes seals. "
                + "Go back to a copy of the journal that is whole.", cause);
        }
    }

    private static StoredBuild Build(DbDataReader row) => new(
        Bytes(row, 0), Bytes(row, 1), Bytes(row, 2), Bytes(row, 3), Bytes(row, 4), Bytes(row, 5), Bytes(row, 6));

    private static StoredEntry Entry(DbDataReader row) => new(
        Bytes(row, 0), row.GetInt64(1), Bytes(row, 2), Bytes(row, 3), Bytes(row, 4), Bytes(row, 5), Bytes(row, 6),
        Bytes(row, 7), Bytes(row, 8));

    private static byte[] Bytes(DbDataReader row, int column) => row.GetFieldValue<byte[]>(column);

    private IEnumerable<T> Query<T>(
        string statement, Func<DbDataReader, T> read, params (string Name, object Value)[] parameters)
    {
        using var command = Command(statement, parameters);
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return Read(reader, statement, read);
    }

    // No column of ours may be empty or of another kind, but a damaged file holds what it holds.
    private static T Read<T>(DbDataReader row, string statement, Func<DbDataReader, T> read)
    {
        try
        {
            return read(row);
        }
        catch (Exception cause) when (cause is InvalidOperationException or InvalidCastException or FormatException or OverflowException)
        {
            throw new JournalDamagedException(
                $"A row of the journal ({statement}) is not as Proveout writes it: a value is missing or of another kind. Keep the file, and save what can be read with `proveout rescue`.", cause);
        }
    }

    private void Execute(string statement, params (string Name, object Value)[] parameters)
    {
        using var command = Command(statement, parameters);
        command.ExecuteNonQuery();
    }

    private DbCommand Command(string statement, (string Name, object Value)[] parameters)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql.Statement(statement);
        foreach (var (name, value) in parameters)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = "@" + name;
            parameter.Value = value;
            command.Parameters.Add(parameter);
        }
        return command;
    }
}
