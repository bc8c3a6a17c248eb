using Proveout.Journal.Chain;
using Proveout.Journal.Store;

namespace Proveout.Journal.Tests.Memory;

/// <summary>A second store, in memory: it shows that the contract holds through the seam and not through the database, and is the pattern for others.</summary>
internal sealed class MemoryStore(MemoryStore.Shelf shelf) : IJournalStore
{
    public Task<T> ReadAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation) => RunAsync(work, cancellation);

    public Task<T> WriteAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation) => RunAsync(work, cancellation);

    public Task<IReadOnlyList<string>> InspectAsync(CancellationToken cancellation) => Task.FromResult<IReadOnlyList<string>>([]);

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    private Task<T> RunAsync<T>(Func<IJournalRows, T> work, CancellationToken cancellation) => Task.Run(
        () =>
        {
            lock (shelf)
            {
                var rows = new Rows(shelf.Tables.Copy());
                var result = work(rows);
                shelf.Tables = rows.Tables;
                return result;
            }
        },
        cancellation);

    /// <summary>What outlives a closed journal.</summary>
    internal sealed class Shelf
    {
        public Tables Tables { get; set; } = new([], [], [], [], []);
    }

    internal sealed record Tables(
        List<StoredBuild> Builds, List<StoredEntry> Entries, Dictionary<string, StoredEnd> Ends, Dictionary<string, byte[]> Files, List<Seal> Seals)
    {
        public Tables Copy() => new([.. Builds], [.. Entries], new(Ends), new(Files), [.. Seals]);
    }

    private sealed class Rows(Tables tables) : IJournalRows
    {
        public Tables Tables => tables;

        public StoredBuild? FindBuild(Guid id) => tables.Builds.SingleOrDefault(build => FieldText.Read(build.Id) == Text(id));

        public StoredBuild? FindBuild(string machineName, string serial) =>
            tables.Builds.SingleOrDefault(build => FieldText.Read(build.MachineName) == machineName && FieldText.Read(build.Serial) == serial);

        public IEnumerable<StoredBuild> ListBuilds() => tables.Builds;

        public void Add(StoredBuild build)
        {
            tables.Builds.Add(build);
            tables.Ends[FieldText.Read(build.Id)] = new StoredEnd(0, build.Hash);
        }

        public IEnumerable<StoredEntry> Entries(Guid build, long after) =>
            tables.Entries.Where(entry => FieldText.Read(entry.BuildId) == Text(build) && entry.Sequence > after).OrderBy(entry => entry.Sequence);

        public StoredEntry? FindEntry(Guid build, long sequence) => Entries(build, sequence - 1).FirstOrDefault(entry => entry.Sequence == sequence);

        public StoredEntry? FindEntry(Guid key) => tables.Entries.SingleOrDefault(entry => FieldText.Read(entry.Key) == Text(key));

        public StoredEntry? FindFileEntry(Guid build, string kind, string sha256) => Entries(build, 0).FirstOrDefault(
            entry => entry.Decode().Content is { } content && KeptFile.Of(content)?.Sha256 == sha256 && (content is PhotoAttached) == (kind == "photo-attached"));

        public void Add(StoredEntry entry)
        {
            var end = tables.Ends[FieldText.Read(entry.BuildId)];
            if (entry.Sequence != end.Entries + 1)
                throw new InvalidOperationException("An entry is put at the end of the record.");
            tables.Entries.Add(entry);
            tables.Ends[FieldText.Read(entry.BuildId)] = new StoredEnd(entry.Sequence, entry.Hash);
        }

        public StoredEnd? FindEnd(Guid build) => tables.Ends.GetValueOrDefault(Text(build));

        public JournalSize Size() => new(tables.Ends.Count, tables.Ends.Values.Sum(end => end.Entries));

        public IEnumerable<(Guid Build, long Entries)> ListEnds() => tables.Ends.Select(end => (Guid.Parse(end.Key), end.Value.Entries));

        public byte[]? FindFile(string sha256) => tables.Files.GetValueOrDefault(sha256);

        public void Keep(string sha256, ReadOnlyMemory<byte> bytes) => tables.Files.TryAdd(sha256, bytes.ToArray());

        public IEnumerable<Seal> Seals(Guid build) => tables.Seals.Where(seal => seal.BuildId == build).OrderBy(seal => seal.Entries);

        public void Add(Seal seal)
        {
            if (!tables.Seals.Contains(seal))
                tables.Seals.Add(seal);
        }

        private static string Text(Guid id) => id.ToString("D");
    }
}
