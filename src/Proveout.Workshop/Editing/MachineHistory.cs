using System.Text;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>One machine on disk with its revisions.</summary>
/// <remarks>
/// A save adds the revision first, which only one of several people at once can do for a number, and then writes the machine's files. What
/// stops between the two is finished at the next look; what else differs from the last revision was changed by something else, and becomes
/// a revision of its own, or a draft when it cannot be read.
/// </remarks>
/// <param name="files">Reads machines.</param>
/// <param name="path">The machine's file or folder.</param>
/// <param name="clock">Tells the time.</param>
internal sealed class MachineHistory(MachineFiles files, string path, TimeProvider clock)
{
    private readonly Lock _gate = new();
    private readonly RevisionFolder _folder = new(path);
    private CurrentMachine? _read;

    public string MachinePath => path;

    public RevisionFolder Folder => _folder;

    /// <summary>The machine as it is now; null when it cannot be read and never could.</summary>
    public CurrentMachine? Current()
    {
        lock (_gate)
        {
            if (!_folder.Exists)
                return Settle();
            using (_folder.Lock())
                return Settle();
        }
    }

    /// <summary>The machine as it was at a revision; null when there is no such revision.</summary>
    public CurrentMachine? At(int number)
    {
        if (_folder.Revision(number) is not { } revision)
            return number == 0 ? Current() is { Revision: 0 } now ? now : At(1) : null;
        return files.Read(TextsOf(revision), path).Value is { } machine ? new(number, TextsOf(revision), machine) : null;
    }

    /// <summary>Saves a text as the next revision after one; null when somebody saved in between.</summary>
    public CurrentMachine? TryAppend(CurrentMachine after, IReadOnlyList<SourceText> texts, LoadedMachine machine, RevisionNote note)
    {
        lock (_gate)
        {
            using var kept = _folder.Lock();
            if (Settle() is not { } now || now.Revision != after.Revision)
                return null;
            var last = now.Revision;
            if (last == 0)
            {
                last = _folder.After(0);
                if (!_folder.TryAdd(Make(last, now.Texts, now.Machine, new(RevisionKind.Found, 0, "", "as it was before the first change"))))
                    return null;
                _folder.MarkInPlace(last);
            }

            var number = _folder.After(last);
            if (!_folder.TryAdd(Make(number, texts, machine, note)))
                return null;
            PutInPlace(number, texts);
            return new(number, texts, machine);
        }
    }

    private CurrentMachine? Settle()
    {
        var onDisk = Bare(MachineFiles.Texts(path).Value ?? []);
        if (_folder.Revisions() is not [.., var head])
            return onDisk.Length > 0 && MachineOf(onDisk) is { } first ? new(0, onDisk, first) : null;
        if (_folder.Revision(head.Number) is not { } last || MachineOf(TextsOf(last)) is not { } machine)
            return null;
        var texts = TextsOf(last);
        if (texts.SequenceEqual(onDisk))
            return new(last.Number, texts, machine);
        if (!_folder.IsInPlace(last.Number))
            PutInPlace(last.Number, texts);
        else if (onDisk.Length > 0)
            return TakeIn(onDisk, new(last.Number, texts, machine));
        return new(last.Number, texts, machine);
    }

    // Most looks find the text that the look before found.
    private LoadedMachine? MachineOf(IReadOnlyList<SourceText> texts)
    {
        if (_read is null || !_read.Texts.SequenceEqual(texts))
            _read = files.Read(texts, path).Value is { } machine ? new(0, texts, machine) : null;
        return _read?.Machine;
    }

    private CurrentMachine TakeIn(SourceText[] onDisk, CurrentMachine last)
    {
        if (files.Read(onDisk, path).Value is { } changed)
        {
            var number = _folder.After(last.Revision);
            if (_folder.TryAdd(Make(number, onDisk, changed, new(RevisionKind.Outside, 0, "", "changed outside the editor"))))
                _folder.MarkInPlace(number);
            return new(number, onDisk, changed);
        }

        if (!_folder.OpenDrafts().Any(draft => TextsOf(_folder.Draft(draft.Number)!.Files).SequenceEqual(onDisk)))
            _folder.Keep(new(0, last.Revision, clock.GetUtcNow(), "", 0, [.. onDisk.Select(text => new NamedText(text.File, text.Text))]));
        return last;
    }

    // The revision is what counts, and it is saved: where its files cannot be written now, the next look tries again.
    private void PutInPlace(int number, IReadOnlyList<SourceText> texts)
    {
        try
        {
            foreach (var text in texts)
                WholeFile.Replace(Directory.Exists(path) ? Path.Combine(path, text.File) : path, stream => stream.Write(Encoding.UTF8.GetBytes(text.Text)));
            _folder.MarkInPlace(number);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
        }
    }

    private SavedRevision Make(int number, IReadOnlyList<SourceText> texts, LoadedMachine machine, RevisionNote note) => new(
        number,
        note.Kind,
        note.Of,
        clock.GetUtcNow(),
        note.Person,
        note.What,
        [machine.Fingerprint, .. StagedMachines.Before(machine).Select(stage => stage.Fingerprint)],
        [.. texts.Select(text => new NamedText(text.File, text.Text))]);

    private static IReadOnlyList<SourceText> TextsOf(SavedRevision revision) => TextsOf(revision.Files);

    private static SourceText[] TextsOf(IReadOnlyList<NamedText> files) => [.. files.Select(file => new SourceText(file.Name, file.Text))];

    private static SourceText[] Bare(IReadOnlyList<SourceText> texts) => [.. texts.Select(text => text with { File = Path.GetFileName(text.File) })];
}
