namespace Proveout.Journal.Store;

/// <summary>Where the rows of a journal are kept: the seam at which another database joins.</summary>
internal interface IJournalStore : IAsyncDisposable
{
    /// <summary>Reads within one transaction, so that all of it is of one moment.</summary>
    Task<T> ReadAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation);

    /// <summary>
    /// Writes within one transaction that no other writer can enter. When the task completes, it is on the disk; when it fails, nothing of it is.
    /// Once it has begun, cancelling has no effect.
    /// </summary>
    Task<T> WriteAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation);

    /// <summary>What the database itself finds wrong with its tables and indexes, in sentences; empty when nothing.</summary>
    Task<IReadOnlyList<string>> InspectAsync(CancellationToken cancellation);
}
