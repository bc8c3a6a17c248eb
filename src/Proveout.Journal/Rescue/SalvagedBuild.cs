using Proveout.Journal.Chain;

namespace Proveout.Journal.Rescue;

/// <summary>What was found of one build.</summary>
/// <param name="id">Its identifier, as it stands in its rows.</param>
internal sealed class SalvagedBuild(string id)
{
    private readonly Dictionary<long, List<StoredEntry>> _candidates = [];
    private readonly List<StoredEnd> _ends = [];

    public string Id => id;

    /// <summary>The build's own record, proven by its hash; null when none was found.</summary>
    public StoredBuild? Record { get; set; }

    /// <summary>The build's own record as far as it can be read, though its hash does not prove it.</summary>
    public StoredBuild? DoubtfulRecord { get; set; }

    public List<StoredEntry> Doubtful { get; } = [];

    public List<Seal> Seals { get; } = [];

    /// <summary>The entries that their hashes prove, one of each number.</summary>
    public SortedDictionary<long, StoredEntry> Entries { get; } = [];

    /// <summary>How far the record went; null when that was not found.</summary>
    public StoredEnd? End { get; private set; }

    /// <summary>Hashes of the entries found so far.</summary>
    public IEnumerable<string> Proven => _candidates.Values.SelectMany(entries => entries).Select(entry => FieldText.Read(entry.Hash));

    public long Recorded => Math.Max(End?.Entries ?? 0, Entries.Count == 0 ? 0 : Entries.Keys.Max());

    /// <summary>Ends that were found, believed or not.</summary>
    public IReadOnlyList<StoredEnd> Ends => _ends;

    public IEnumerable<long> Missing => Range(1, Recorded).Where(number => !Entries.ContainsKey(number));

    public void Add(StoredEntry entry)
    {
        if (!_candidates.TryGetValue(entry.Sequence, out var others))
            _candidates[entry.Sequence] = others = [];
        if (!others.Any(other => Same(other.Hash, entry.Hash)))
            others.Add(entry);
    }

    public void Add(StoredEnd end) => _ends.Add(end);

    /// <summary>
    /// Decides between entries of one number. There are two when a process was killed while it wrote the one and another was recorded in its place:
    /// what was recorded is what the next entry or the end refers to.
    /// </summary>
    public void Settle()
    {
        End = _ends.Where(IsCredible).OrderByDescending(end => end.Entries).FirstOrDefault();
        var wanted = End?.Hash;
        foreach (var (number, entries) in _candidates.OrderByDescending(pair => pair.Key))
        {
            if (number < 1)
                continue;
            var referredTo = entries.FirstOrDefault(entry => wanted is not null && Same(entry.Hash, wanted));
            Entries[number] = referredTo ?? entries[^1];
            wanted = Entries[number].PreviousHash;
        }
    }

    // An end of which the number was damaged names a hash that stands elsewhere.
    private bool IsCredible(StoredEnd end) =>
        end.Entries >= 0
        && !_candidates.Any(pair => pair.Key != end.Entries && pair.Value.Any(entry => Same(entry.Hash, end.Hash)))
        && (end.Entries == 0 || Record is null || !Same(end.Hash, Record.Hash));

    private static IEnumerable<long> Range(long first, long last)
    {
        for (var number = first; number <= last; number++)
            yield return number;
    }

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);
}
