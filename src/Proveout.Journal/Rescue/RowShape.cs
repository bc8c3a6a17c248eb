namespace Proveout.Journal.Rescue;

/// <summary>How a row of one of the journal's tables looks in a page.</summary>
internal enum RowShape
{
    /// <summary>id, serial, machine name, fingerprint, builder, started, hash.</summary>
    Build,

    /// <summary>build, sequence, key, recorded, person, instrument, content, hash before, hash.</summary>
    Entry,

    /// <summary>build, number of entries, hash.</summary>
    End,

    /// <summary>fingerprint, bytes.</summary>
    File,

    /// <summary>build, number of entries, hash, sealed, person, public key, signature.</summary>
    Seal,
}
