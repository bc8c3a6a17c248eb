using Proveout.Journal.Postgres;

namespace Proveout.Journal;

/// <summary>A journal in a PostgreSQL database, for a workshop with several servers.</summary>
public sealed class PostgresJournal : StoreJournal
{
    private PostgresJournal(PostgresDatabase database, TimeProvider clock)
        : base(new PostgresStore(database), clock) => (Keys, Access, Tries) = (new PostgresKeys(database), new PostgresPage(database), new PostgresCounts(database));

    /// <summary>Keys that the servers of this journal share.</summary>
    public ISharedKeys Keys { get; }

    /// <summary>The page of who may come in.</summary>
    public ISharedPage Access { get; }

    /// <summary>Counts of who tried to come in.</summary>
    public ISharedCounts Tries { get; }

    /// <summary>Opens the journal in a database, and makes its tables where there are none.</summary>
    /// <param name="address">A URI as libpq defines it, without a password: <c>postgresql://user@server:5432/database</c>.</param>
    /// <param name="clock">Gives the time that entries are recorded with.</param>
    /// <param name="longestWait">How long a call waits for another process that writes to the same build; 20 s when not given.</param>
    /// <param name="cancellation">Cancels before the database is asked.</param>
    /// <exception cref="JournalUnavailableException">The address is not one, or the database cannot be reached or written.</exception>
    /// <exception cref="JournalFormatException">What is there is no journal, or one of a newer format.</exception>
    public static async Task<PostgresJournal> OpenAsync(
        string address, TimeProvider clock, TimeSpan? longestWait = null, CancellationToken cancellation = default)
    {
        var database = Connect(address, longestWait);
        try
        {
            await Task.Run(database.Prepare, cancellation).ConfigureAwait(false);
            return new PostgresJournal(database, clock);
        }
        catch
        {
            database.Dispose();
            throw;
        }
    }

    /// <summary>Whether there is a journal in the database; none is made.</summary>
    /// <exception cref="JournalUnavailableException">The address is not one, or the database cannot be reached.</exception>
    public static async Task<bool> ExistsAsync(string address, CancellationToken cancellation = default)
    {
        using var database = Connect(address, longestWait: null);
        return await Task.Run(database.HoldsJournal, cancellation).ConfigureAwait(false);
    }

    private static PostgresDatabase Connect(string address, TimeSpan? longestWait) =>
        new(PostgresAddress.Read(address), longestWait ?? TimeSpan.FromSeconds(20));
}
