using System.Net.Sockets;
using Npgsql;

namespace Proveout.Journal.Postgres;

/// <summary>The one place where errors of the driver become sentences. Codes: PostgreSQL documentation, appendix "PostgreSQL Error Codes".</summary>
internal static class PostgresErrors
{
    private const string IdleInTransaction = "25P03";

    /// <summary>Another writer came first, or the two stood in each other's way: nothing is recorded, and it goes right when it is done again.</summary>
    public static bool IsCollision(Exception exception) => exception is PostgresException
    {
        SqlState: PostgresErrorCodes.UniqueViolation or PostgresErrorCodes.SerializationFailure or PostgresErrorCodes.DeadlockDetected,
    };

    /// <summary>The connection is gone, of itself or because the server stops; as one kept for reuse is after the server was started anew.</summary>
    public static bool IsLoss(Exception exception) => exception switch
    {
        PostgresException { SqlState: PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown } => true,
        PostgresException { SqlState: IdleInTransaction } => true,
        PostgresException => false,
        NpgsqlException or IOException or SocketException or TimeoutException or ObjectDisposedException => true,
        _ => false,
    };

    /// <summary>Whether it is for this place to put into words.</summary>
    public static bool IsOfDriver(Exception exception) => exception is NpgsqlException || IsLoss(exception);

    /// <param name="name">Of the database, as people are told it.</param>
    /// <param name="cause">What the driver said.</param>
    public static JournalException Of(string name, Exception cause) => cause switch
    {
        PostgresException refusal => OfServer(name, refusal),
        NpgsqlException when cause.Message.StartsWith("No password", StringComparison.Ordinal) => NotLetIn(name, cause),
        _ => new JournalUnavailableException(
            $"The database {name} cannot be reached: nothing was read or recorded. See that its server runs and that the address is right, then try again.", cause),
    };

    /// <summary>The connection broke when everything was sent and the word that it is on the disk had not come.</summary>
    public static JournalException Unanswered(string name, Exception cause) => new JournalUnavailableException(
        $"The connection to the database {name} was lost before it said that the entry is on its disk, so it may be recorded or not. "
        + "Send the same again: it goes in once.", cause);

    /// <summary>The same for a change of who may come in, which is no entry.</summary>
    public static JournalException UnansweredChange(string name, Exception cause) => new JournalUnavailableException(
        $"The connection to the database {name} was lost before it said that the change is on its disk, so it may be made or not. Look how it stands, then try again.", cause);

    private static JournalUnavailableException NotLetIn(string name, Exception cause) => new(
        $"The database {name} lets this user in only with the right name and password. Give the user in the address, and the password as PGPASSWORD in the "
        + "environment or in the password file.", cause);

    private static JournalException OfServer(string name, PostgresException cause) => cause.SqlState switch
    {
        PostgresErrorCodes.InvalidPassword or PostgresErrorCodes.InvalidAuthorizationSpecification => NotLetIn(name, cause),
        PostgresErrorCodes.InvalidCatalogName => new JournalUnavailableException(
            $"There is no database {name}. Make it with PostgreSQL's `createdb`, or correct the address.", cause),
        PostgresErrorCodes.InsufficientPrivilege => new JournalUnavailableException(
            $"This user may not use the journal in the database {name} ({cause.MessageText}). Nothing was recorded; whoever looks after the database can allow it.", cause),
        PostgresErrorCodes.ReadOnlySqlTransaction => new JournalUnavailableException(
            $"The database {name} only answers questions: it is a copy of another one, or set to read-only. Nothing was recorded; give the address of the one that is written to.", cause),
        PostgresErrorCodes.LockNotAvailable => new JournalUnavailableException(
            $"What was to be written in the database {name} is held by another program. Nothing was recorded; close that program or wait, then try again.", cause),
        PostgresErrorCodes.DiskFull => new JournalUnavailableException(
            $"There is no space left for the database {name}. Nothing was recorded; make space, then try again.", cause),
        PostgresErrorCodes.TooManyConnections or PostgresErrorCodes.ConfigurationLimitExceeded => new JournalUnavailableException(
            $"The database {name} has no connection left for one more program. Nothing was recorded; close one, or raise max_connections of the server.", cause),
        PostgresErrorCodes.CannotConnectNow or PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown => new JournalUnavailableException(
            $"The server of the database {name} is starting or stopping. Nothing was recorded; try again in a moment.", cause),
        // The statements are fixed: one that does not fit the tables means that the tables are not those that were made.
        PostgresErrorCodes.DataCorrupted or PostgresErrorCodes.IndexCorrupted or PostgresErrorCodes.UndefinedTable or PostgresErrorCodes.UndefinedColumn => new JournalDamagedException(
            $"The journal in the database {name} is damaged ({cause.MessageText}). Keep it as it is, and go back to a copy that is whole.", cause),
        _ => new JournalUnavailableException(
            $"The database {name} did not take it ({cause.MessageText}). Nothing was recorded; try again.", cause),
    };
}
