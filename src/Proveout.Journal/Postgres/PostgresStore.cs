using Proveout.Journal.Store;

namespace Proveout.Journal.Postgres;

/// <summary>The rows of a journal in a PostgreSQL database.</summary>
/// <remarks>
/// The work above is synchronous, so that each call occupies a thread; no more of them than there are connections, and the others wait without one.
/// </remarks>
/// <param name="database">The database, prepared.</param>
internal sealed class PostgresStore(PostgresDatabase database) : IJournalStore
{
    private readonly SemaphoreSlim _connections = new(PostgresDatabase.MostConnections);

    public Task<T> ReadAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation) => RunAsync(() => database.Read(work), cancellation);

    public Task<T> WriteAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation) => RunAsync(() => database.Write(work), cancellation);

    public Task<IReadOnlyList<string>> InspectAsync(CancellationToken cancellation) => RunAsync(database.Inspect, cancellation);

    public ValueTask DisposeAsync()
    {
        database.Dispose();
        _connections.Dispose();
        return ValueTask.CompletedTask;
    }

    private async Task<T> RunAsync<T>(Func<T> work, CancellationToken cancellation)
    {
        await _connections.WaitAsync(cancellation).ConfigureAwait(false);
        try
        {
            return await Task.Run(work, CancellationToken.None).ConfigureAwait(false);
        }
        finally
        {
            _connections.Release();
        }
    }
}
