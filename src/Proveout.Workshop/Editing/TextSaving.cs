using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Saves the text of a file; keeps what cannot be saved.</summary>
internal sealed class TextSaving(MachineFiles files, MachineHistory history, TimeProvider clock)
{
    private const int MostRounds = 20;

    public SaveAnswer Save(SaveText request)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            if (history.Current() is not { } now || history.At(request.Base) is not { } seen)
                return SaveAnswer.Refuse(0, EditRefusals.Unreadable(history.MachinePath));
            if (now.Texts.All(text => text.File != request.File))
                return SaveAnswer.Refuse(now.Revision, EditRefusals.NoSuchFile(request.File));
            var before = history.Folder.Draft(request.Draft)?.Files.Select(file => new SourceText(file.Name, file.Text)).ToArray() ?? seen.Texts;
            IReadOnlyList<SourceText> entered = [.. before.Select(text => text.File == request.File ? Typed(text, request.Text) : text)];
            var texts = seen.Revision == now.Revision ? entered : MachineText.Merge(seen.Texts, entered, now.Texts);
            if (texts is null && ConflictsOf(seen.Texts, entered, now.Texts) is { Count: > 0 } conflicts)
                return Keep(request, entered, now, [], conflicts);
            if (texts is null)
                return Keep(request, entered, now, ErrorsOf(entered) is { Count: > 0 } errors ? errors : [EditRefusals.SameLines()], []);
            var read = files.Read(texts, history.MachinePath);
            if (read.Value is not { } machine)
                return Keep(request, entered, now, ErrorsOf(entered) is { Count: > 0 } own ? own : read.Diagnostics, []);
            if (texts.SequenceEqual(now.Texts))
                return new(now.Revision, [], []);
            if (history.TryAppend(now, texts, machine, new(RevisionKind.Edited, 0, request.Person.Trim(), WordsOf(now.Texts, texts, request.File))) is { } saved)
                return Settled(request, saved);
        }

        return SaveAnswer.Refuse(0, EditRefusals.ChangedMeanwhile(null));
    }

    // Browsers send every line break as CR LF (HTML, 4.10.22); the file keeps its own kind.
    private static SourceText Typed(SourceText before, string typed) => before with
    {
        Text = before.Text.Contains("\r\n", StringComparison.Ordinal)
            ? typed.ReplaceLineEndings("\r\n")
            : typed.Replace("\r\n", "\n", StringComparison.Ordinal),
    };

    private SaveAnswer Keep(SaveText request, IReadOnlyList<SourceText> entered, CurrentMachine now, IReadOnlyList<Diagnostic> problems, IReadOnlyList<EditConflict> conflicts)
    {
        var draft = history.Folder.Keep(DraftOf(request, entered.Select(text => new NamedText(text.File, text.Text))));
        return new(now.Revision, problems, conflicts) { Draft = draft.Number };
    }

    private IReadOnlyList<Diagnostic> ErrorsOf(IReadOnlyList<SourceText> texts) => files.Read(texts, history.MachinePath).Diagnostics;

    private SaveAnswer Settled(SaveText request, CurrentMachine saved)
    {
        if (request.Draft > 0)
            history.Folder.Keep(DraftOf(request, []) with { Became = saved.Revision });
        return new(saved.Revision, [], []);
    }

    private MachineDraft DraftOf(SaveText request, IEnumerable<NamedText> texts) =>
        new(0, request.Base, clock.GetUtcNow(), request.Person.Trim(), request.Draft, [.. texts]);

    private static IReadOnlyList<EditConflict> ConflictsOf(IReadOnlyList<SourceText> seen, IReadOnlyList<SourceText> mine, IReadOnlyList<SourceText> theirs) =>
        MachineText.Touched(seen, mine).Value is { } byMe && MachineText.Touched(seen, theirs).Value is { } byThem
            ? [.. byMe.Where(byThem.Contains).Select(thing => new EditConflict(thing, MachineText.WordsOf(mine, thing), MachineText.WordsOf(theirs, thing)))]
            : [];

    private static string WordsOf(IReadOnlyList<SourceText> before, IReadOnlyList<SourceText> after, string file)
    {
        var things = MachineText.Touched(before, after).Value ?? new HashSet<EditedThing>();
        return things.Count switch
        {
            0 => $"comments or layout of {file}",
            <= 3 => $"{string.Join("; ", things)} changed in the text of {file}",
            _ => FormattableString.Invariant($"{things.Count} things changed in the text of {file}"),
        };
    }
}
