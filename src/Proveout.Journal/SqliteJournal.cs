using System.Runtime.CompilerServices;
using Microsoft.Data.Sqlite;
using Proveout.Journal.Chain;
using Proveout.Journal.Sqlite;

namespace Proveout.Journal;

/// <summary>A journal in one SQLite file.</summary>
/// <remarks>The driver has no asynchronous work of its own, so that each call runs on the thread pool.</remarks>
public sealed class SqliteJournal : IJournal
{
    // Between processes there is no signal; a quarter of a second is prompt for a person at the bench.
    private static readonly TimeSpan PollEvery = TimeSpan.FromMilliseconds(250);

    private readonly SqliteFile _file;
    private readonly TimeProvider _clock;
    private readonly AppendSignal _appended = new();
    private readonly SemaphoreSlim _writing = new(1);

    private SqliteJournal(SqliteFile file, TimeProvider clock) => (_file, _clock) = (file, clock);

    /// <summary>Opens the journal at a path, and creates it and its folders where there is none.</summary>
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
        await Task.Run(file.Prepare, cancellation).ConfigureAwait(false);
        return new SqliteJournal(file, clock);
    }

    /// <inheritdoc/>
    public async Task<Build> StartBuildAsync(BuildDraft draft, CancellationToken cancellation = default)
    {
        DraftRules.Require(draft);
        return await WriteAsync(connection => SqliteAppend.Start(connection, draft, _clock), cancellation).ConfigureAwait(false);
    }

    /// <inheritdoc/>
    public Task<Build?> FindBuildAsync(Guid buildId, CancellationToken cancellation = default) =>
        ReadAsync(connection => SqliteRows.FindBuild(connection, buildId)?.Decode(), cancellation);

    /// <inheritdoc/>
    public Task<IReadOnlyList<Build>> ListBuildsAsync(CancellationToken cancellation = default) =>
        ReadAsync<IReadOnlyList<Build>>(connection => [.. SqliteRows.ListBuilds(connection).Select(build => build.Decode())], cancellation);

    /// <inheritdoc/>
    public async Task<Entry> AppendAsync(Guid buildId, EntryDraft draft, CancellationToken cancellation = default)
    {
        DraftRules.Require(draft);
        var entry = await WriteAsync(connection => SqliteAppend.Append(connection, buildId, draft, _clock), cancellation)
            .ConfigureAwait(false);
        _appended.Raise();
        return entry;
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<Entry>> ReadAsync(Guid buildId, int afterSequence = 0, CancellationToken cancellation = default) =>
        ReadAsync<IReadOnlyList<Entry>>(
            connection =>
            {
                RequireBuild(connection, buildId);
                return [.. SqliteRows.Entries(connection, buildId, afterSequence).Select(entry => entry.Decode())];
            },
            cancellation);

    /// <inheritdoc/>
    public async IAsyncEnumerable<Entry> WatchAsync(
        Guid buildId, int afterSequence = 0, [EnumeratorCancellation] CancellationToken cancellation = default)
    {
        while (true)
        {
            var next = _appended.Next;
            foreach (var entry in await ReadAsync(buildId, afterSequence, cancellation).ConfigureAwait(false))
            {
                yield return entry;
                afterSequence = entry.Sequence;
            }
            await Task.WhenAny(next, Task.Delay(PollEvery, _clock, cancellation)).ConfigureAwait(false);
            cancellation.ThrowIfCancellationRequested();
        }
    }

    /// <inheritdoc/>
    public Task<Photo?> ReadPhotoAsync(Guid buildId, string sha256, CancellationToken cancellation = default) =>
        ReadAsync(
            connection => SqliteRows.FindFileEntry(connection, buildId, "photo-attached", sha256)?.Decode() is { Content: PhotoAttached about } entry
                ? new Photo(about, RequireFile(connection, KeptFile.Of(about)!, entry.Sequence))
                : null,
            cancellation);

    /// <inheritdoc/>
    public Task<DataFile?> ReadDataFileAsync(Guid buildId, string sha256, CancellationToken cancellation = default) =>
        ReadAsync(
            connection => SqliteRows.FindFileEntry(connection, buildId, "measurement-taken", sha256)?.Decode() is { Content: MeasurementTaken { Sha256.Length: > 0 } about } entry
                ? new DataFile(about, RequireFile(connection, KeptFile.Of(about)!, entry.Sequence))
                : null,
            cancellation);

    /// <inheritdoc/>
    public Task<ChainVerdict> VerifyAsync(Guid buildId, CancellationToken cancellation = default) =>
        ReadAsync(
            connection =>
            {
                var build = SqliteRows.FindBuild(connection, buildId);
                var entries = SqliteRows.Entries(connection, buildId, after: long.MinValue);
                var end = SqliteRows.FindEnd(connection, buildId);
                if (build is null && end is null && !entries.Any())
                    throw new BuildNotFoundException(buildId);
                return ChainCheck.Run(build, entries, end, sha256 => SqliteRows.FindFile(connection, sha256));
            },
            cancellation);

    /// <summary>Closes the file.</summary>
    public ValueTask DisposeAsync()
    {
        _file.Close();
        _writing.Dispose();
        return ValueTask.CompletedTask;
    }

    private static void RequireBuild(SqliteConnection connection, Guid buildId)
    {
        if (SqliteRows.FindBuild(connection, buildId) is null)
            throw new BuildNotFoundException(buildId);
    }

    private static byte[] RequireFile(SqliteConnection connection, KeptFile about, int sequence) =>
        SqliteRows.FindFile(connection, about.Sha256) is { } bytes && Fingerprint.OfBytes(bytes) == about.Sha256
            ? bytes
            : throw new JournalDamagedException(
                $"The {about.Word} {about.FileName} of entry {sequence} is missing or is not the one that was attached. "
                + "Go back to a copy of the journal that is whole.");

    private Task<T> ReadAsync<T>(Func<SqliteConnection, T> work, CancellationToken cancellation) =>
        Task.Run(() => _file.Read(work), cancellation);

    // Writers of this process queue here in turn; those of other processes wait for the lock of the file.
    private async Task<T> WriteAsync<T>(Func<SqliteConnection, T> work, CancellationToken cancellation)
    {
        await _writing.WaitAsync(cancellation).ConfigureAwait(false);
        try
        {
            return await Task.Run(() => _file.Write(work), CancellationToken.None).ConfigureAwait(false);
        }
        finally
        {
            _writing.Release();
        }
    }
}
