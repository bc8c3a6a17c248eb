namespace Proveout.Journal;

/// <summary>What a seal says about a record.</summary>
public enum SealStanding
{
    /// <summary>Up to the sealed entry the record is as it was when it was sealed.</summary>
    Holds,

    /// <summary>The signature does not belong to the fields of the seal: the seal itself was altered.</summary>
    Forged,

    /// <summary>The seal was signed with another key than the one that is trusted.</summary>
    OtherKey,

    /// <summary>The seal is of another build.</summary>
    OtherBuild,

    /// <summary>The record has fewer entries than were sealed.</summary>
    CutOff,

    /// <summary>The sealed entry, or one before it, is not what it was: the record was written anew.</summary>
    Rewritten,
}
