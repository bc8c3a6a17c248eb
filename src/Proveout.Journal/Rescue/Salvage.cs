using System.Globalization;
using Proveout.Journal.Chain;

namespace Proveout.Journal.Rescue;

/// <summary>Everything that can be read from the bytes of a journal file, sorted by build and proven by hashes.</summary>
internal sealed class Salvage : IDisposable
{
    private readonly Dictionary<string, SalvagedBuild> _builds = [];
    private readonly List<StoredEntry> _doubtful = [];
    private readonly PageFile _pages;
    private readonly RowChain _chain;

    private Salvage(PageFile pages) => (_pages, _chain) = (pages, new RowChain(pages));

    public IEnumerable<SalvagedBuild> Builds =>
        _builds.Values.OrderBy(build => build.Record is null ? "" : FieldText.Read(build.Record.Started), StringComparer.Ordinal).ThenBy(build => build.Id, StringComparer.Ordinal);

    /// <summary>Where photographs and data files stand, by the SHA-256 of the bytes that are there.</summary>
    public Dictionary<string, FoundFile> Files { get; } = [];

    /// <summary>What was put right, in sentences.</summary>
    public List<string> Mended { get; } = [];

    /// <summary>Entries of which not even the build can be told.</summary>
    public List<StoredEntry> Homeless { get; } = [];

    public static Salvage Of(string path)
    {
        var salvage = new Salvage(new PageFile(path));
        try
        {
            new RowScan(salvage._pages, salvage._chain, salvage.Take).Run();
            salvage.Sort();
            return salvage;
        }
        catch
        {
            salvage.Dispose();
            throw;
        }
    }

    /// <summary>The bytes of a file, read now; null when it was not found.</summary>
    /// <exception cref="JournalUnavailableException">They are no longer those that were found.</exception>
    public byte[]? ReadFile(string sha256) => Files.TryGetValue(sha256, out var file) ? _chain.Read(file) : null;

    public void Dispose() => _pages.Dispose();

    private void Take(FoundRow row)
    {
        var fields = row.Fields;
        switch (row.Shape)
        {
            case RowShape.Build:
                Take(new StoredBuild(fields[0], fields[1], fields[2], fields[3], fields[4], fields[5], fields[6]));
                break;
            case RowShape.Entry:
                Take(new StoredEntry(fields[0], row.Number(1), fields[2], fields[3], fields[4], fields[5], fields[6], fields[7], fields[8]));
                break;
            case RowShape.End:
                if (IsId(fields[0]))
                    Of(fields[0]).Add(new StoredEnd(row.Number(1), fields[2]));
                break;
            case RowShape.File:
                Files.TryAdd(row.File!.Sha256, row.File);
                break;
            case RowShape.Seal:
                Take(fields, row.Number(1));
                break;
        }
    }

    private void Take(StoredBuild build)
    {
        if (Same(build.ComputeHash(), build.Hash) && IsId(build.Id))
            Of(build.Id).Record = build;
        else if (Mending.Of(build) is { } mended && IsId(mended.Id))
            Of(mended.Id).Record ??= Note(mended, $"The record of build {FieldText.Read(mended.Id)}");
        else if (IsId(build.Id))
            Of(build.Id).DoubtfulRecord = build;
    }

    private void Take(StoredEntry entry)
    {
        if (Same(entry.ComputeHash(), entry.Hash) && IsId(entry.BuildId))
            Of(entry.BuildId).Add(entry);
        else
            _doubtful.Add(entry);
    }

    private void Take(IReadOnlyList<byte[]> fields, long entries)
    {
        if (!Guid.TryParseExact(FieldText.Read(fields[0]), "D", out var build) || entries is < 0 or > int.MaxValue)
            return;
        if (DateTimeOffset.TryParse(FieldText.Read(fields[3]), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var when))
        {
            var seal = new Seal(
                build, (int)entries, FieldText.Read(fields[2]), when, FieldText.Read(fields[4]), FieldText.Read(fields[5]), FieldText.Read(fields[6]));
            if (!Of(fields[0]).Seals.Contains(seal))
                Of(fields[0]).Seals.Add(seal);
        }
    }

    // What another page has whole needs no mending; the same damaged row may have been found twice.
    private void Sort()
    {
        var proven = _builds.Values.SelectMany(build => build.Proven).ToHashSet();
        foreach (var entry in _doubtful.DistinctBy(entry => FieldText.Read(entry.ComputeHash())))
        {
            if (proven.Contains(FieldText.Read(entry.Hash)))
                continue;
            if (Mending.Of(entry) is { } mended && IsId(mended.BuildId))
            {
                if (proven.Add(FieldText.Read(mended.Hash)))
                    Of(mended.BuildId).Add(Note(mended, FormattableString.Invariant($"Entry {mended.Sequence} of build {FieldText.Read(mended.BuildId)}")));
            }
            else if (_builds.TryGetValue(FieldText.Read(entry.BuildId), out var build))
                build.Doubtful.Add(entry);
            else
                Homeless.Add(entry);
        }
        foreach (var build in _builds.Values)
            build.Settle();
        RemoveStrays();
    }

    /// <summary>
    /// An end or a seal alone may be all that is left of a build. But one that names a hash of another build belongs to that one, and its identifier was damaged.
    /// </summary>
    private void RemoveStrays()
    {
        var known = _builds.Values.SelectMany(build => build.Proven)
            .Concat(_builds.Values.Select(build => build.Record).OfType<StoredBuild>().Select(record => FieldText.Read(record.Hash))).ToHashSet();
        foreach (var stray in _builds.Values.Where(build => build is { Record: null, DoubtfulRecord: null, Entries.Count: 0 }).ToList())
            if (stray.Ends.Count == 0 || stray.Ends.All(end => known.Contains(FieldText.Read(end.Hash))))
                _builds.Remove(stray.Id);
    }

    private T Note<T>(T mended, string what)
    {
        Mended.Add($"{what} had one flipped bit, which was put back; its hash proves it.");
        return mended;
    }

    private SalvagedBuild Of(byte[] id)
    {
        var text = FieldText.Read(id);
        return _builds.TryGetValue(text, out var build) ? build : _builds[text] = new SalvagedBuild(text);
    }

    private static bool IsId(byte[] field) => Guid.TryParseExact(FieldText.Read(field), "D", out _);

    private static bool Same(byte[] one, byte[] other) => one.AsSpan().SequenceEqual(other);
}
