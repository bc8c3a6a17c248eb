using Proveout.Journal.Chain;

namespace Proveout.Journal;

/// <summary>Everything that is recorded of one build, as it is stored, on its way from one journal to an archive or to another journal.</summary>
public sealed class BuildRecord
{
    internal BuildRecord(StoredBuild build, IReadOnlyList<StoredEntry> entries, IReadOnlyList<Seal> seals, IReadOnlyDictionary<string, byte[]> files) =>
        (Stored, StoredEntries, Seals, Files) = (build, entries, seals, files);

    /// <summary>The build.</summary>
    /// <exception cref="JournalDamagedException">Its record cannot be read.</exception>
    public Build Build => Stored.Decode();

    /// <summary>Number of entries.</summary>
    public int Entries => StoredEntries.Count;

    /// <summary>The seals kept with it.</summary>
    public IReadOnlyList<Seal> Seals { get; }

    /// <summary>Hash of the last entry, or of the build's own record when there is none.</summary>
    public string LastHash => FieldText.Read(End.Hash);

    internal StoredBuild Stored { get; }

    internal IReadOnlyList<StoredEntry> StoredEntries { get; }

    /// <summary>Photographs and data files by their SHA-256.</summary>
    internal IReadOnlyDictionary<string, byte[]> Files { get; }

    internal StoredEnd End => StoredEntries is [.., var last] ? new StoredEnd(last.Sequence, last.Hash) : new StoredEnd(0, Stored.Hash);

    /// <summary>Hash of the build's own record, then of each entry.</summary>
    internal IReadOnlyList<string> Hashes => [FieldText.Read(Stored.Hash), .. StoredEntries.Select(entry => FieldText.Read(entry.Hash))];

    /// <summary>Recomputes the chain.</summary>
    public ChainVerdict Verify() => ChainCheck.Run(Stored, StoredEntries, End, Files.GetValueOrDefault);
}
