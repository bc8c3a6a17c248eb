using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A revision in the list of revisions.</summary>
/// <param name="Revision">The revision.</param>
/// <param name="Changes">What differs from the one before, in trade words.</param>
public sealed record RevisionView(SavedRevision Revision, IReadOnlyList<DesignChange> Changes);
