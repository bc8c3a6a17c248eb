using System.Data;
using Npgsql;
using Proveout.Journal.Store;

namespace Proveout.Journal.Postgres;

/// <summary>One journal in a PostgreSQL database: its connections, its transactions and its format.</summary>
internal sealed class PostgresDatabase : IDisposable
{
    internal const int Format = 1;

    /// <summary>Connections of one process. A server allows 100 unless told otherwise, so that six processes fit.</summary>
    internal const int MostConnections = 16;

    private const int MostAttempts = 10;

    // Longer than a lock is waited for; a server that is silent for so long is gone.
    private const int SecondsForAnAnswer = 60;

    // To look through all of a large journal takes as long as it takes.
    private const int WithoutLimit = 0;

    // 'PRVO' in ASCII, as in the head of a journal's file: whoever makes the tables holds this lock.
    private const long MakingLock = 0x5052564F;

    private static readonly SqlText Sql = new("Postgres");
    private static readonly string[] Checks = ["check-rows", "check-guards", "check-indexes"];
    private readonly NpgsqlDataSource _connections;

    /// <param name="address">As <see cref="PostgresAddress"/> reads it.</param>
    /// <param name="longestWait">How long to wait for a lock that another holds.</param>
    public PostgresDatabase(NpgsqlConnectionStringBuilder address, TimeSpan longestWait)
    {
        Name = PostgresAddress.NameOf(address);
        var settings = new NpgsqlConnectionStringBuilder(address.ToString())
        {
            ApplicationName = "proveout",
            MaxPoolSize = MostConnections,
            CommandTimeout = SecondsForAnAnswer,
            MaxAutoPrepare = 32,
            // Nothing is ever set on a connection that the next to use it could mind.
            NoResetOnClose = true,
            // A server may be set to acknowledge before the disk has it; a program that hangs in the middle must not hold a record for ever.
            Options = FormattableString.Invariant(
                $"-c synchronous_commit=on -c lock_timeout={longestWait.TotalMilliseconds:F0} -c idle_in_transaction_session_timeout=60000"),
        };
        _connections = NpgsqlDataSource.Create(settings);
    }

    /// <summary>As people are told it.</summary>
    public string Name { get; }

    /// <summary>Makes the tables where there are none, and refuses a database of another kind or of a newer format.</summary>
    public void Prepare() => Write(connection =>
    {
        RefuseUnlessSafe(connection);
        Run(connection, FormattableString.Invariant($"SELECT pg_advisory_xact_lock({MakingLock})"));
        if (!IsJournal(connection))
            Run(connection, Sql.Tables + Sql.Guards);
        return true;
    });

    /// <summary>Whether there is a journal in the database, without making one.</summary>
    public bool HoldsJournal() => Read(IsJournal);

    public T Read<T>(Func<IJournalRows, T> work) => Read(connection => work(new SqlRows(connection, Sql)));

    public T Write<T>(Func<IJournalRows, T> work) => Write(connection => work(new SqlRows(connection, Sql, "hold-end")));

    /// <summary>What the database shows to be wrong with rows, guards and indexes; it reads all of them.</summary>
    public IReadOnlyList<string> Inspect()
    {
        try
        {
            return Read<IReadOnlyList<string>>(connection => [.. Checks.SelectMany(name => Texts(connection, Sql.Statement(name), WithoutLimit))]);
        }
        catch (JournalDamagedException damage)
        {
            return [damage.Message];
        }
    }

    public void Dispose() => _connections.Dispose();

    // Repeatable read: all statements see the one moment of the first.
    internal T Read<T>(Func<NpgsqlConnection, T> work) => Again(() =>
    {
        using var connection = _connections.OpenConnection();
        using var transaction = connection.BeginTransaction(IsolationLevel.RepeatableRead);
        return work(connection);
    });

    // One statement, which sees one moment by itself.
    internal T Ask<T>(Func<NpgsqlConnection, T> question) => Again(() =>
    {
        using var connection = _connections.OpenConnection();
        return question(connection);
    });

    // Read committed: each statement sees all that is committed, so that who has waited for an end sees where it is now and what was recorded meanwhile.
    // Repeatable read would refuse everybody who waited.
    internal T Write<T>(Func<NpgsqlConnection, T> work, Func<Exception, JournalException>? unanswered = null) => Again(() =>
    {
        using var connection = _connections.OpenConnection();
        using var transaction = connection.BeginTransaction(IsolationLevel.ReadCommitted);
        var result = work(connection);
        try
        {
            transaction.Commit();
        }
        catch (Exception cause) when (PostgresErrors.IsLoss(cause))
        {
            throw unanswered?.Invoke(cause) ?? PostgresErrors.Unanswered(Name, cause);
        }
        return result;
    });

    // Before the commit is sent nothing of a transaction counts, and it may be done anew.
    private T Again<T>(Func<T> transact)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return transact();
            }
            catch (Exception cause) when (attempt < MostAttempts && PostgresErrors.IsCollision(cause))
            {
                Thread.Sleep(attempt);
            }
            // Once: the pool may have handed out a connection of before the server was started anew, and has dropped all of those by now.
            catch (Exception cause) when (attempt == 1 && PostgresErrors.IsLoss(cause))
            {
            }
            catch (Exception cause) when (PostgresErrors.IsOfDriver(cause))
            {
                throw PostgresErrors.Of(Name, cause);
            }
        }
    }

    /// <exception cref="JournalFormatException">The schema is of something else, or of a newer format.</exception>
    private bool IsJournal(NpgsqlConnection connection)
    {
        if (Texts(connection, "SELECT nspname FROM pg_namespace WHERE nspname = 'proveout'").Count == 0)
            return false;
        if (Texts(connection, "SELECT relname FROM pg_class WHERE relname = 'format' AND relnamespace = 'proveout'::regnamespace").Count == 0)
            throw new JournalFormatException($"The database {Name} has a schema named proveout that is not a journal. Give the address of another database.");
        if (Texts(connection, "SELECT number::text FROM proveout.format") is not [var text] || !int.TryParse(text, out var format) || format < 1)
            throw new JournalFormatException($"The schema proveout of the database {Name} does not say which format it has. Go back to a copy that is whole.");
        if (format > Format)
            throw new JournalFormatException(
                $"The journal in the database {Name} has format {format}, and this Proveout knows formats up to {Format}. Open it with a newer Proveout; it was left as it is.");
        return true;
    }

    private void RefuseUnlessSafe(NpgsqlConnection connection)
    {
        if (Texts(connection, "SHOW server_encoding") is not ["UTF8"])
            throw new JournalFormatException($"The database {Name} does not keep texts as UTF-8. Make one that does: `createdb --encoding=UTF8 --template=template0`.");
        foreach (var setting in (string[])["fsync", "full_page_writes"])
            if (Texts(connection, $"SHOW {setting}") is not ["on"])
                throw new JournalUnavailableException(
                    $"The server of the database {Name} runs with {setting} off, so that what it acknowledged can be gone after a loss of power. Switch it on in its settings.", null);
    }

    private static List<string> Texts(NpgsqlConnection connection, string sql, int seconds = SecondsForAnAnswer)
    {
        using var command = new NpgsqlCommand(sql, connection) { CommandTimeout = seconds };
        using var reader = command.ExecuteReader();
        var texts = new List<string>();
        while (reader.Read())
            texts.Add(reader.GetString(0));
        return texts;
    }

    private static void Run(NpgsqlConnection connection, string sql)
    {
        using var command = new NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }
}
