using Proveout.Journal.Chain;

namespace Proveout.Journal.Store;

/// <summary>
/// The rows of a journal within one transaction: all that a database has to offer. What a row means, which are admitted and in which order is
/// decided above, once for every database.
/// </summary>
internal interface IJournalRows
{
    StoredBuild? FindBuild(Guid id);

    StoredBuild? FindBuild(string machineName, string serial);

    /// <summary>In the order in which they were added.</summary>
    IEnumerable<StoredBuild> ListBuilds();

    /// <summary>Adds a build with an end of 0 entries.</summary>
    void Add(StoredBuild build);

    /// <summary>Those after a sequence, by ascending sequence, also when numbers are missing or are not positive.</summary>
    IEnumerable<StoredEntry> Entries(Guid build, long after);

    StoredEntry? FindEntry(Guid build, long sequence);

    StoredEntry? FindEntry(Guid key);

    /// <summary>The first entry of a kind whose content names a file.</summary>
    StoredEntry? FindFileEntry(Guid build, string kind, string sha256);

    /// <summary>Adds an entry at the end and moves the end; refuses it anywhere else.</summary>
    void Add(StoredEntry entry);

    /// <summary>How far a record goes. In a writing transaction nobody else moves it from then on; who writes to a build asks this first.</summary>
    StoredEnd? FindEnd(Guid build);

    /// <summary>How many builds there are, and how many entries all of them have together.</summary>
    JournalSize Size();

    /// <summary>How many entries the record of each build has, in any order.</summary>
    IEnumerable<(Guid Build, long Entries)> ListEnds();

    byte[]? FindFile(string sha256);

    /// <summary>Keeps bytes under their fingerprint; does nothing when they are there.</summary>
    void Keep(string sha256, ReadOnlyMemory<byte> bytes);

    /// <summary>By ascending number of entries, then in the order in which they were added.</summary>
    IEnumerable<Seal> Seals(Guid build);

    /// <summary>Adds a seal; does nothing when an equal one is there.</summary>
    void Add(Seal seal);
}
