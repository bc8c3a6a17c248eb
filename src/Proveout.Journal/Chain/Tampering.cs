namespace Proveout.Journal;

/// <summary>What was done to a record, by hand or by a fault of the disk, as far as its hashes tell.</summary>
public enum Tampering
{
    /// <summary>A field, a hash or a file is not what it was.</summary>
    Altered,

    /// <summary>Something that was recorded is gone.</summary>
    Removed,

    /// <summary>Something stands there that was not recorded there.</summary>
    Inserted,

    /// <summary>Entries stand in another order.</summary>
    Reordered,

    /// <summary>The last entries are gone.</summary>
    CutOff,
}
