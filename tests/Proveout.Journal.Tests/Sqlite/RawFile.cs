using Microsoft.Data.Sqlite;

namespace Proveout.Journal.Tests.Sqlite;

/// <summary>Goes at a journal file past the journal, as somebody with a database tool would.</summary>
internal static class RawFile
{
    public static int Execute(string path, string sql, params (string Name, object Value)[] parameters)
    {
        using var connection = Open(path);
        using var command = Command(connection, sql, parameters);
        return command.ExecuteNonQuery();
    }

    public static T Read<T>(string path, string sql, params (string Name, object Value)[] parameters)
    {
        using var connection = Open(path);
        using var command = Command(connection, sql, parameters);
        return (T)command.ExecuteScalar()!;
    }

    /// <summary>Takes away what forbids changes, as only someone who means to forge would.</summary>
    public static void TakeGuardsOff(string path, params string[] except)
    {
        using var connection = Open(path);
        var triggers = new List<string>();
        using (var list = Command(connection, "SELECT name FROM sqlite_schema WHERE type = 'trigger'", []))
        using (var reader = list.ExecuteReader())
            while (reader.Read())
                triggers.Add(reader.GetString(0));
        foreach (var trigger in triggers.Except(except))
            Command(connection, $"DROP TRIGGER {trigger}", []).ExecuteNonQuery();
    }

    /// <summary>Holds the lock of writers until disposed.</summary>
    public static IDisposable Hold(string path)
    {
        var connection = Open(path);
        Command(connection, "BEGIN IMMEDIATE", []).ExecuteNonQuery();
        return connection;
    }

    private static SqliteConnection Open(string path)
    {
        var address = new SqliteConnectionStringBuilder { DataSource = path, Pooling = false, ForeignKeys = false };
        var connection = new SqliteConnection(address.ToString());
        connection.Open();
        return connection;
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql, (string Name, object Value)[] parameters)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in parameters)
            command.Parameters.AddWithValue(name, value);
        return command;
    }
}
