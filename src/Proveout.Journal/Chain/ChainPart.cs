namespace Proveout.Journal;

/// <summary>Where a chain is broken.</summary>
public enum ChainPart
{
    /// <summary>The record of the build itself.</summary>
    BuildRecord,

    /// <summary>The numbering: an entry is missing or out of its place.</summary>
    Order,

    /// <summary>The reference of an entry to the one before.</summary>
    Link,

    /// <summary>The fields of an entry, or its hash.</summary>
    Entry,

    /// <summary>The bytes of a photograph or data file.</summary>
    Photo,

    /// <summary>The end: entries were taken off or put on without being recorded.</summary>
    End,
}
