using System.Diagnostics;
using System.Runtime.CompilerServices;
using Proveout.Journal.Chain;
using Proveout.Journal.Store;

namespace Proveout.Journal;

/// <summary>The journal as it behaves whatever its rows are kept in.</summary>
public class StoreJournal : IJournal
{
    // Between processes there is no signal; a quarter of a second is prompt for a person at the bench.
    private static readonly TimeSpan PollEvery = TimeSpan.FromMilliseconds(250);

    private readonly IJournalStore _store;
    private readonly TimeProvider _clock;
    private readonly AppendSignal _appended = new();

    internal StoreJournal(IJournalStore store, TimeProvider clock) => (_store, _clock) = (store, clock);

    /// <inheritdoc/>
    public async Task<Build> StartBuildAsync(BuildDraft draft, CancellationToken cancellation = default)
    {
        DraftRules.Require(draft);
        return await _store.WriteAsync(rows => Appending.Start(rows, draft, _clock), cancellation).ConfigureAwait(false);
    }

    /// <inheritdoc/>
    public Task<Build?> FindBuildAsync(Guid buildId, CancellationToken cancellation = default) =>
        _store.ReadAsync(rows => rows.FindBuild(buildId)?.Decode(), cancellation);

    /// <inheritdoc/>
    public Task<IReadOnlyList<Build>> ListBuildsAsync(CancellationToken cancellation = default) =>
        _store.ReadAsync<IReadOnlyList<Build>>(rows => [.. rows.ListBuilds().Select(build => build.Decode())], cancellation);

    /// <inheritdoc/>
    public async Task<Entry> AppendAsync(Guid buildId, EntryDraft draft, CancellationToken cancellation = default)
    {
        DraftRules.Require(draft);
        var start = Stopwatch.GetTimestamp();
        var entry = await _store.WriteAsync(rows => Appending.Append(rows, buildId, draft, _clock), cancellation).ConfigureAwait(false);
        JournalMeter.Appended.Record(Stopwatch.GetElapsedTime(start).TotalSeconds);
        _appended.Raise();
        return entry;
    }

    /// <inheritdoc/>
    public Task<IReadOnlyList<Entry>> ReadAsync(Guid buildId, int afterSequence = 0, CancellationToken cancellation = default) =>
        _store.ReadAsync<IReadOnlyList<Entry>>(
            rows =>
            {
                RequireBuild(rows, buildId);
                return [.. rows.Entries(buildId, afterSequence).Select(entry => entry.Decode())];
            },
            cancellation);

    /// <inheritdoc/>
    public Task<JournalSize> SizeAsync(CancellationToken cancellation = default) => _store.ReadAsync(rows => rows.Size(), cancellation);

    /// <inheritdoc/>
    public Task<IReadOnlyList<BuildNews>> ReadNewsAsync(IReadOnlyDictionary<Guid, int> known, int most, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        return _store.ReadAsync(rows => News.Of(rows, known, most), cancellation);
    }

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
        _store.ReadAsync(
            rows => rows.FindFileEntry(buildId, "photo-attached", sha256)?.Decode() is { Content: PhotoAttached about } entry
                ? new Photo(about, RequireFile(rows, KeptFile.Of(about)!, entry.Sequence))
                : null,
            cancellation);

    /// <inheritdoc/>
    public Task<DataFile?> ReadDataFileAsync(Guid buildId, string sha256, CancellationToken cancellation = default) =>
        _store.ReadAsync(
            rows => rows.FindFileEntry(buildId, "measurement-taken", sha256)?.Decode() is { Content: MeasurementTaken { Sha256.Length: > 0 } about } entry
                ? new DataFile(about, RequireFile(rows, KeptFile.Of(about)!, entry.Sequence))
                : null,
            cancellation);

    /// <inheritdoc/>
    public Task<ChainVerdict> VerifyAsync(Guid buildId, CancellationToken cancellation = default) =>
        _store.ReadAsync(
            rows =>
            {
                var build = rows.FindBuild(buildId);
                var entries = rows.Entries(buildId, after: long.MinValue);
                var end = rows.FindEnd(buildId);
                if (build is null && end is null && !entries.Any())
                    throw new BuildNotFoundException(buildId);
                return ChainCheck.Run(build, entries, end, rows.FindFile);
            },
            cancellation);

    /// <inheritdoc/>
    public Task<IReadOnlyList<SealVerdict>> CheckSealsAsync(
        Guid buildId, IReadOnlyList<Seal> others, string? publicKey, CancellationToken cancellation = default) =>
        _store.ReadAsync<IReadOnlyList<SealVerdict>>(
            rows =>
            {
                var build = RequireBuild(rows, buildId);
                var hashes = (byte[][])[build.ComputeHash(), .. rows.Entries(buildId, after: 0).Select(entry => entry.ComputeHash())];
                return SealCheck.Run([.. rows.Seals(buildId), .. others], buildId, [.. hashes.Select(FieldText.Read)], publicKey);
            },
            cancellation);

    /// <inheritdoc/>
    public Task<Seal> SealAsync(Guid buildId, SealKey key, string person, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(key);
        DraftRules.RequireText(person, "The name of the person");
        return _store.WriteAsync(
            rows =>
            {
                var end = rows.FindEnd(buildId) ?? throw new BuildNotFoundException(buildId);
                var verdict = ChainCheck.Run(rows.FindBuild(buildId), rows.Entries(buildId, after: long.MinValue), end, rows.FindFile);
                if (verdict is ChainBroken broken)
                    throw new RecordRefusedException($"The record is broken, so that it is not sealed. {broken.Sentence}");
                var seal = key.Sign(buildId, (int)end.Entries, FieldText.Read(end.Hash), _clock.GetUtcNow(), person);
                rows.Add(seal);
                return seal;
            },
            cancellation);
    }

    /// <inheritdoc/>
    public Task<BuildRecord> TakeOutAsync(Guid buildId, CancellationToken cancellation = default) =>
        _store.ReadAsync(
            rows =>
            {
                var build = RequireBuild(rows, buildId);
                var entries = rows.Entries(buildId, after: 0).ToList();
                var files = entries.Select(entry => KeptFile.Of(entry.Decode().Content)?.Sha256).OfType<string>().Distinct()
                    .Select(sha256 => (Name: sha256, Bytes: rows.FindFile(sha256))).Where(file => file.Bytes is not null);
                return new BuildRecord(build, entries, [.. rows.Seals(buildId)], files.ToDictionary(file => file.Name, file => file.Bytes!));
            },
            cancellation);

    /// <inheritdoc/>
    public async Task<Admitted> AdmitAsync(BuildRecord record, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(record);
        Admission.Require(record);
        var admitted = await _store.WriteAsync(rows => Admission.Run(rows, record), cancellation).ConfigureAwait(false);
        _appended.Raise();
        return admitted;
    }

    /// <inheritdoc/>
    public Task ProbeAsync(CancellationToken cancellation = default) => _store.WriteAsync(rows => rows.FindBuild(Guid.Empty), cancellation);

    /// <inheritdoc/>
    public Task<IReadOnlyList<string>> InspectAsync(CancellationToken cancellation = default) => _store.InspectAsync(cancellation);

    /// <summary>Closes the store.</summary>
    public async ValueTask DisposeAsync()
    {
        await _store.DisposeAsync().ConfigureAwait(false);
        GC.SuppressFinalize(this);
    }

    private static StoredBuild RequireBuild(IJournalRows rows, Guid buildId) => rows.FindBuild(buildId) ?? throw new BuildNotFoundException(buildId);

    private static byte[] RequireFile(IJournalRows rows, KeptFile about, int sequence) =>
        rows.FindFile(about.Sha256) is { } bytes && Fingerprint.OfBytes(bytes) == about.Sha256
            ? bytes
            : throw new JournalDamagedException(
                $"The {about.Word} {about.FileName} of entry {sequence} is missing or is not the one that was attached. "
                + "Go back to a copy of the journal that is whole.");
}
