namespace Proveout.Workshop;

/// <summary>How a revision of a machine came about.</summary>
public enum RevisionKind
{
    /// <summary>The files as they were before the first change.</summary>
    Found,

    /// <summary>Somebody changed something.</summary>
    Edited,

    /// <summary>A revision was taken back.</summary>
    Undone,

    /// <summary>A revision that was taken back was made again.</summary>
    Redone,

    /// <summary>The files were changed by something else than the editor.</summary>
    Outside,
}
