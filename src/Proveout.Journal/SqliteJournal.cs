using Proveout.Journal.Sqlite;

namespace Proveout.Journal;

/// <summary>A journal in one SQLite file.</summary>
public sealed class SqliteJournal : StoreJournal
{
    private readonly SqliteFile _file;

    private SqliteJournal(SqliteFile file, TimeProvider clock)
        : base(new SqliteStore(file), clock) => _file = file;

    /// <summary>Opens the journal at a path, and creates it and its folders where there is none; one of an earlier format is brought up to date.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="clock">Gives the time that entries are recorded with.</param>
    /// <param name="longestWait">How long a call waits for another process that is writing; whole seconds; 20 s when not given.</param>
    /// <param name="cancellation">Cancels before the file is touched.</param>
    /// <exception cref="JournalUnavailableException">The file cannot be created or written.</exception>
    /// <exception cref="JournalFormatException">The file is no journal, or one of a newer format.</exception>
    public static async Task<SqliteJournal> OpenAsync(
        string path, TimeProvider clock, TimeSpan? longestWait = null, CancellationToken cancellation = default)
    {
        var file = new SqliteFile(path, longestWait ?? TimeSpan.FromSeconds(20));
        try
        {
            await Task.Run(file.Prepare, cancellation).ConfigureAwait(false);
        }
        catch
        {
            // A connection kept for reuse would go on seeing this file when another is put in its place.
            file.Close();
            throw;
        }
        return new SqliteJournal(file, clock);
    }

    /// <summary>Copies the journal as it is at one moment, while others go on writing; the copy is one file that needs no other beside it.</summary>
    /// <param name="path">Where the copy goes; nothing may be there.</param>
    /// <param name="cancellation">Cancels before anything is copied.</param>
    /// <exception cref="JournalUnavailableException">There is a file already, or none can be written.</exception>
    public Task BackUpAsync(string path, CancellationToken cancellation = default) => Task.Run(() => _file.CopyTo(path), cancellation);
}
