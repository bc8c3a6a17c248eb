namespace Proveout.Journal.Store;

/// <summary>Where the rows of a journal are kept: the seam at which another database joins.</summary>
internal interface IJournalStore : IAsyncDisposable
{
    /// <summary>Reads within one transaction, so that all of it is of one moment.</summary>
    Task<T> ReadAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation);

    /// <summary>
    /// Writes within one transaction, so that no two writers move the end of one record at a time. When the task completes, it is on the disk; when it
    /// fails, nothing of it is, unless the sentence says that this is not known. The work may be done more than once, of which one counts. Once it has
    /// begun, cancelling has no effect.
    /// </summary>
    Task<T> WriteAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation);

    /// <summary>What the database itself finds wrong with its tables and indexes, in sentences; empty when nothing.</summary>
    Task<IReadOnlyList<string>> InspectAsync(CancellationToken cancellation);
}
