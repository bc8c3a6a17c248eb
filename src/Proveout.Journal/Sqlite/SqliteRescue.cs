using Microsoft.Data.Sqlite;
using Proveout.Journal.Chain;
using Proveout.Journal.Rescue;
using Proveout.Journal.Store;

namespace Proveout.Journal.Sqlite;

/// <summary>Writes what was salvaged into a new journal, with its gaps: the guards, which would refuse those, are put up afterwards.</summary>
internal static class SqliteRescue
{
    private const string NotReadable = "not readable";

    public static void Write(Salvage salvage, string target) => SqliteErrors.Translate(target, () =>
    {
        var address = new SqliteConnectionStringBuilder { DataSource = target, Pooling = false, ForeignKeys = true };
        using var connection = new SqliteConnection(address.ToString());
        connection.Open();
        Run(connection, "PRAGMA synchronous = EXTRA");
        using var transaction = connection.BeginTransaction();
        Run(connection, SqliteFile.Sql.Tables);
        var rows = new SqlRows(connection, SqliteFile.Sql);
        foreach (var build in salvage.Builds)
            Write(connection, rows, build, salvage);
        Run(connection, SqliteFile.Sql.Guards);
        transaction.Commit();
        return true;
    });

    private static void Write(SqliteConnection connection, SqlRows rows, SalvagedBuild build, Salvage salvage)
    {
        var record = build.Record ?? Usable(rows, build.DoubtfulRecord) ?? StandIn(build);
        rows.Add(record);
        foreach (var entry in build.Entries.Values)
        {
            rows.Add(entry);
            if (Kept(entry) is { } file && salvage.ReadFile(file.Sha256) is { } bytes)
                rows.Keep(file.Sha256, bytes);
        }
        var end = build.End is { } known && known.Entries >= build.Recorded ? known
            : build.Entries.Count > 0 ? new StoredEnd(build.Recorded, build.Entries[build.Recorded].Hash)
            : new StoredEnd(0, record.Hash);
        using var command = connection.CreateCommand();
        command.CommandText = "INSERT INTO ends (build_id, entries, hash) VALUES (CAST($build AS TEXT), $entries, CAST($hash AS TEXT))";
        command.Parameters.AddWithValue("$build", record.Id);
        command.Parameters.AddWithValue("$entries", end.Entries);
        command.Parameters.AddWithValue("$hash", end.Hash);
        command.ExecuteNonQuery();
        foreach (var seal in build.Seals)
            rows.Add(seal);
    }

    private static KeptFile? Kept(StoredEntry entry)
    {
        try
        {
            return KeptFile.Of(entry.Decode().Content);
        }
        catch (JournalDamagedException)
        {
            return null;
        }
    }

    /// <summary>A record that was altered, where it can at least be read and stands in no other's way; verifying says that it was altered.</summary>
    private static StoredBuild? Usable(SqlRows rows, StoredBuild? doubtful)
    {
        try
        {
            return doubtful?.Decode() is { } build && rows.FindBuild(build.MachineName, build.Serial) is null ? doubtful : null;
        }
        catch (JournalDamagedException)
        {
            return null;
        }
    }

    /// <summary>So that the entries of a build can be reached whose own record is lost; it says of itself that it is none.</summary>
    private static StoredBuild StandIn(SalvagedBuild build) => new(
        FieldText.Write(build.Id), FieldText.Write($"{NotReadable} {build.Id[..8]}"), FieldText.Write(NotReadable), FieldText.Write(new string('0', 64)),
        FieldText.Write(NotReadable), build.Entries.Values.FirstOrDefault()?.Recorded ?? FieldText.Write(DateTimeOffset.UnixEpoch),
        build.Entries.GetValueOrDefault(1)?.PreviousHash ?? FieldText.Write(new string('0', 64)));

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
