namespace Proveout.Workshop;

/// <summary>Takes revisions back and makes them again, each time as a new revision.</summary>
internal sealed class StepSaving(MachineHistory history)
{
    public SaveAnswer Undo(int seen, string person) => Step(seen, person, RevisionKind.Undone, stack => stack.Undo, of => of - 1, "undo");

    public SaveAnswer Redo(int seen, string person) => Step(seen, person, RevisionKind.Redone, stack => stack.Redo, of => of, "redo");

    private SaveAnswer Step(int seen, string person, RevisionKind kind, Func<UndoStack, int> choose, Func<int, int> textOf, string word)
    {
        if (history.Current() is not { } now)
            return SaveAnswer.Refuse(0, EditRefusals.Unreadable(history.MachinePath));
        var revisions = history.Folder.Revisions();
        // What somebody saved since is not taken back unseen.
        if (now.Revision != seen)
            return SaveAnswer.Refuse(now.Revision, EditRefusals.ChangedMeanwhile(revisions.Count > 0 ? revisions[^1] : null));
        var of = choose(UndoStack.Of(revisions));
        if (of == 0)
            return SaveAnswer.Refuse(now.Revision, EditRefusals.NothingLeft(word));
        if (history.At(textOf(of)) is not { } target)
            return SaveAnswer.Refuse(now.Revision, EditRefusals.Unreadable(history.MachinePath));
        var what = revisions.First(revision => revision.Number == of).What;
        var note = new RevisionNote(kind, of, person.Trim(), $"{(kind == RevisionKind.Undone ? "taken back" : "made again")}: {what}");
        return history.TryAppend(now, target.Texts, target.Machine, note) is { } saved
            ? new(saved.Revision, [], [])
            : SaveAnswer.Refuse(now.Revision, EditRefusals.ChangedMeanwhile(null));
    }
}
