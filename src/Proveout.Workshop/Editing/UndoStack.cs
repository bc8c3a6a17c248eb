namespace Proveout.Workshop;

/// <summary>Which revision would be taken back next, and which made again.</summary>
/// <param name="Undo">Number of the revision to take back; 0 when there is none.</param>
/// <param name="Redo">Number of the revision to make again; 0 when there is none.</param>
internal readonly record struct UndoStack(int Undo, int Redo)
{
    /// <summary>What the revisions of a machine leave to take back and to make again.</summary>
    public static UndoStack Of(IReadOnlyList<SavedRevision> revisions)
    {
        var (done, undone) = (new Stack<int>(), new Stack<int>());
        foreach (var revision in revisions.Where(revision => revision.Kind != RevisionKind.Found))
        {
            if (revision.Kind == RevisionKind.Undone)
            {
                done.TryPop(out _);
                undone.Push(revision.Of);
                continue;
            }

            if (revision.Kind == RevisionKind.Redone)
                undone.TryPop(out _);
            else
                undone.Clear();
            done.Push(revision.Kind == RevisionKind.Redone ? revision.Of : revision.Number);
        }

        return new(done.FirstOrDefault(), undone.FirstOrDefault());
    }
}
