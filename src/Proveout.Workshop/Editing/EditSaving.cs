using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Saves edits.</summary>
internal sealed class EditSaving(MachineFiles files, MachineHistory history)
{
    // Each round lost was won by somebody else's save; so many in a row do not happen.
    private const int MostRounds = 20;

    public SaveAnswer Save(SaveEdits request)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            if (history.Current() is not { } now)
                return SaveAnswer.Refuse(0, EditRefusals.Unreadable(history.MachinePath));
            if (request.Edits.Count == 0)
                return new(now.Revision, [], []);
            if (ConflictsWith(request, now) is { Count: > 0 } conflicts)
                return new(now.Revision, [], conflicts);
            var edited = MachineText.Apply(now.Texts, request.Edits);
            if (edited.Value is not { } texts)
                return SaveAnswer.Refuse(now.Revision, edited.Diagnostics);
            var read = files.Read(texts, history.MachinePath);
            if (read.Value is not { } machine)
                return SaveAnswer.Refuse(now.Revision, read.Diagnostics);
            if (texts.SequenceEqual(now.Texts))
                return new(now.Revision, [], []);
            var note = new RevisionNote(RevisionKind.Edited, 0, request.Person.Trim(), WordsOf(request.Edits));
            if (history.TryAppend(now, texts, machine, note) is { } saved)
                return new(saved.Revision, [], []);
        }

        return SaveAnswer.Refuse(0, EditRefusals.ChangedMeanwhile(null));
    }

    private IReadOnlyList<EditConflict> ConflictsWith(SaveEdits request, CurrentMachine now)
    {
        if (request.Base == now.Revision || history.At(request.Base) is not { } seen || MachineText.Touched(seen.Texts, now.Texts).Value is not { } touched)
            return [];
        var mine = MachineText.Apply(seen.Texts, request.Edits).Value ?? seen.Texts;
        return
        [
            .. from thing in request.Edits.SelectMany(edit => edit.Things).Distinct()
               where touched.Contains(thing)
               let words = (Mine: MachineText.WordsOf(mine, thing), Theirs: MachineText.WordsOf(now.Texts, thing))
               where words.Mine != words.Theirs
               select new EditConflict(thing, words.Mine, words.Theirs),
        ];
    }

    private static string WordsOf(IReadOnlyList<MachineEdit> edits) => edits.Count <= 3
        ? string.Join("; ", edits.Select(edit => edit.Words))
        : FormattableString.Invariant($"{edits[0].Words}; {edits[1].Words}; {edits.Count - 2} more changes");
}
