using Microsoft.Data.Sqlite;

namespace Proveout.Journal.Sqlite;

/// <summary>Copies a database while others use it, by SQLite's online backup (sqlite.org/backup.html).</summary>
internal static class SqliteCopy
{
    private const int Corrupt = 11, NotADatabase = 26;

    /// <summary>
    /// The target is made under its own name, not moved there: SQLite syncs the folder with its rollback journal, so that the name is on the disk
    /// too when this returns. It ends in rollback mode: one file that may be read from a disk that cannot be written.
    /// </summary>
    public static void Run(SqliteConnection source, string target)
    {
        SqliteErrors.Translate(target, () => MakeEmpty(target));
        try
        {
            var address = new SqliteConnectionStringBuilder { DataSource = target, Pooling = false };
            using var copy = new SqliteConnection(address.ToString());
            copy.Open();
            Execute(copy, "PRAGMA synchronous = EXTRA");
            source.BackupDatabase(copy);
            Execute(copy, "PRAGMA journal_mode = DELETE");
        }
        catch (SqliteException cause)
        {
            Discard(target);
            throw cause.SqliteErrorCode is Corrupt or NotADatabase ? cause : SqliteErrors.Of(target, cause);
        }
    }

    private static void Execute(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    /// <summary>Removes a copy that did not come out.</summary>
    public static void Discard(string target)
    {
        foreach (var suffix in (string[])["", "-journal", "-wal", "-shm"])
            File.Delete(target + suffix);
    }

    /// <summary>Makes the file, where there is none; another that does the same at this moment fails.</summary>
    public static bool MakeEmpty(string target)
    {
        if (File.Exists(target))
            throw new JournalUnavailableException($"There is a file {target} already. It was left as it is; give another path.", null);
        if (Path.GetDirectoryName(Path.GetFullPath(target)) is { Length: > 0 } folder)
            Directory.CreateDirectory(folder);
        new FileStream(target, FileMode.CreateNew).Dispose();
        return true;
    }
}
