using Microsoft.Data.Sqlite;
using Proveout.Journal.Rescue;
using Proveout.Journal.Store;

namespace Proveout.Journal.Sqlite;

/// <summary>One journal file: its connections, its transactions and its format.</summary>
/// <param name="path">Where it is.</param>
/// <param name="longestWait">How long to wait for a lock that another process holds, whole seconds, at least one.</param>
internal sealed class SqliteFile(string path, TimeSpan longestWait)
{
    internal const long ApplicationId = 0x5052564F;
    internal const long Format = 2;
    private const int LooksAtFrames = 4;
    internal static readonly SqlText Sql = new("Sqlite");

    private readonly string _connectionString = new SqliteConnectionStringBuilder
    {
        DataSource = path,
        ForeignKeys = true,
        DefaultTimeout = (int)longestWait.TotalSeconds,
    }.ToString();

    /// <summary>Creates the file and its folders where they are missing, and refuses files of another kind or of a newer format.</summary>
    public void Prepare() => SqliteErrors.Translate(path, () =>
    {
        if (Path.GetDirectoryName(Path.GetFullPath(path)) is { Length: > 0 } folder)
            Directory.CreateDirectory(folder);
        RefuseIfCommittedIsHidden();
        using var connection = Connect();
        // Before anything is changed, and in one transaction: another process may be creating the file just now.
        using (connection.BeginTransaction(deferred: true))
            RefuseUnlessJournalOrEmpty(connection);
        Run(connection, "PRAGMA journal_mode = WAL");
        // Taking the lock shows at once whether the file may be written, and keeps out another process that creates it too.
        using var transaction = connection.BeginTransaction(deferred: false);
        if (!RefuseUnlessJournalOrEmpty(connection))
            Run(connection, Sql.Tables + Sql.Guards);
        for (var format = Number(connection, "PRAGMA user_version") + 1; format <= Format; format++)
            Run(connection, Sql.Upgrade(format));
        transaction.Commit();
        return true;
    });

    /// <summary>Reads within one transaction, so that all of it is of one moment.</summary>
    public T Read<T>(Func<SqliteConnection, T> work) => Transact(deferred: true, work);

    /// <summary>Writes within one transaction that no other writer can enter (BEGIN IMMEDIATE); on return it is on the disk.</summary>
    public T Write<T>(Func<SqliteConnection, T> work) => Transact(deferred: false, work);

    /// <summary>What SQLite finds wrong with the pages, indexes and references of the file; empty when nothing.</summary>
    public IReadOnlyList<string> Inspect()
    {
        try
        {
            return Read(connection => (string[])[.. Texts(connection, "PRAGMA integrity_check").Where(text => text != "ok"), .. Texts(connection, "PRAGMA foreign_key_check").Select(table => $"a row of {table} refers to a build that is not there")]);
        }
        catch (JournalDamagedException damage)
        {
            return [damage.Message];
        }
    }

    /// <summary>Copies the file as it is at one moment into a new one.</summary>
    public void CopyTo(string target) => SqliteErrors.Translate(path, () =>
    {
        using var connection = Connect();
        SqliteCopy.Run(connection, target);
        return true;
    });

    /// <summary>Copies a file that is not to be written, not even to prepare it.</summary>
    public void CopyReadOnlyTo(string target) => SqliteErrors.Translate(path, () =>
    {
        var address = new SqliteConnectionStringBuilder(_connectionString) { Mode = SqliteOpenMode.ReadOnly, Pooling = false };
        using var connection = new SqliteConnection(address.ToString());
        connection.Open();
        if (!RefuseUnlessJournalOrEmpty(connection))
            throw new JournalFormatException($"{path} is empty: there is no journal in it.");
        SqliteCopy.Run(connection, target);
        return true;
    });

    /// <summary>Closes the connections kept for reuse.</summary>
    public void Close()
    {
        using var connection = new SqliteConnection(_connectionString);
        SqliteConnection.ClearPool(connection);
    }

    // Opening would drop what lies behind the damage, and closing would remove the file that it is in. Another process may be writing a frame at the
    // very moment of a look; it is complete at the next.
    private void RefuseIfCommittedIsHidden()
    {
        for (var look = 0; look < LooksAtFrames; look++)
            if (WriteAheadFile.Beside(path) is not { } ahead || !ahead.HidesCommitted())
                return;
        throw new JournalDamagedException(
            $"The file {path}-wal, which holds the newest entries of the journal, is damaged in the middle. Nothing was opened or changed: "
            + "save what can be read with `proveout rescue`, and keep both files.");
    }

    private T Transact<T>(bool deferred, Func<SqliteConnection, T> work) => SqliteErrors.Translate(path, () =>
    {
        using var connection = Connect();
        using var transaction = connection.BeginTransaction(deferred);
        var result = work(connection);
        transaction.Commit();
        return result;
    });

    private SqliteConnection Connect()
    {
        var connection = new SqliteConnection(_connectionString);
        try
        {
            connection.Open();
            // EXTRA: in WAL mode each commit is synced, so that what was acknowledged also survives a loss of power; before a new file is in that mode,
            // the removal of its rollback journal is synced too, so that it cannot come back and undo what was committed.
            Run(connection, $"PRAGMA synchronous = EXTRA; PRAGMA busy_timeout = {longestWait.TotalMilliseconds:F0}");
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <returns>True when it is a journal, false when the file is empty.</returns>
    private bool RefuseUnlessJournalOrEmpty(SqliteConnection connection)
    {
        var application = Number(connection, "PRAGMA application_id");
        var format = Number(connection, "PRAGMA user_version");
        if (application == ApplicationId && format > Format)
            throw new JournalFormatException(
                $"The journal {path} has format {format}, and this Proveout knows formats up to {Format}. "
                + "Open it with a newer Proveout; it was left as it is.");
        if (application == ApplicationId)
            return true;
        if (application != 0 || format != 0 || Number(connection, "SELECT count(*) FROM sqlite_schema") != 0)
            throw new JournalFormatException($"{path} is not a journal. Give the path of a journal, or of a file that does not exist yet.");
        return false;
    }

    private static long Number(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return (long)command.ExecuteScalar()!;
    }

    private static List<string> Texts(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var texts = new List<string>();
        while (reader.Read())
            texts.Add(reader.GetString(0));
        return texts;
    }

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
