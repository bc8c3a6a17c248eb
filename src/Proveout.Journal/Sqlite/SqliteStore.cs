using Proveout.Journal.Store;

namespace Proveout.Journal.Sqlite;

/// <summary>The rows of a journal in one SQLite file.</summary>
/// <remarks>The driver has no asynchronous work of its own, so that each call runs on the thread pool.</remarks>
/// <param name="file">The file, prepared.</param>
internal sealed class SqliteStore(SqliteFile file) : IJournalStore
{
    private readonly SemaphoreSlim _writing = new(1);

    public Task<T> ReadAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation) =>
        Task.Run(() => file.Read(connection => work(new SqlRows(connection, SqliteFile.Sql))), cancellation);

    // Writers of this process queue here in turn; those of other processes wait for the lock of the file.
    public async Task<T> WriteAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation)
    {
        await _writing.WaitAsync(cancellation).ConfigureAwait(false);
        try
        {
            return await Task.Run(() => file.Write(connection => work(new SqlRows(connection, SqliteFile.Sql))), CancellationToken.None).ConfigureAwait(false);
        }
        finally
        {
            _writing.Release();
        }
    }

    public Task<IReadOnlyList<string>> InspectAsync(CancellationToken cancellation) => Task.Run(file.Inspect, cancellation);

    public ValueTask DisposeAsync()
    {
        file.Close();
        _writing.Dispose();
        return ValueTask.CompletedTask;
    }
}
