using System.Globalization;

namespace Proveout.Workshop;

/// <summary>The revisions and drafts of one machine, in a folder beside its file or folder; files are added to it, and none is changed.</summary>
internal sealed class RevisionFolder
{
    /// <summary>What the folder's name ends with.</summary>
    public const string Ending = ".revisions";

    private readonly string _folder;
    private readonly NumberedFiles<SavedRevision> _revisions;
    private readonly NumberedFiles<MachineDraft> _drafts;

    public RevisionFolder(string machinePath)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(machinePath));
        _folder = (full.EndsWith(".yaml", StringComparison.Ordinal) ? full[..^".yaml".Length] : full) + Ending;
        _revisions = new(_folder, "revision");
        _drafts = new(_folder, "draft");
    }

    /// <summary>True when the machine was changed here before.</summary>
    public bool Exists => Directory.Exists(_folder);

    /// <summary>Keeps other processes out of the folder, which is made when it is not there.</summary>
    public IDisposable Lock()
    {
        Directory.CreateDirectory(_folder);
        return FolderLock.Take(_folder);
    }

    /// <summary>Every revision without its text, oldest first.</summary>
    public IReadOnlyList<SavedRevision> Revisions() => _revisions.Heads(revision => revision with { Files = [] });

    /// <summary>A revision with its text; null when there is none of that number.</summary>
    public SavedRevision? Revision(int number) => _revisions.Read(number);

    /// <summary>The number of the revision that follows another.</summary>
    public int After(int number) => _revisions.After(number);

    /// <summary>Adds a revision; false when somebody added that number before.</summary>
    public bool TryAdd(SavedRevision revision) => _revisions.TryAdd(revision.Number, revision);

    /// <summary>Every draft without its text, oldest first; one that became a revision, or that another goes on from, is not open any more.</summary>
    public IReadOnlyList<MachineDraft> OpenDrafts()
    {
        var all = _drafts.Heads(draft => draft with { Files = [] });
        var done = all.Select(draft => draft.Continues).ToHashSet();
        return [.. all.Where(draft => draft.Became == 0 && !done.Contains(draft.Number))];
    }

    /// <summary>A draft with its text; null when there is none of that number.</summary>
    public MachineDraft? Draft(int number) => _drafts.Read(number);

    /// <summary>Keeps a draft under the next free number.</summary>
    public MachineDraft Keep(MachineDraft draft)
    {
        while (true)
        {
            var numbered = draft with { Number = _drafts.Next };
            if (_drafts.TryAdd(numbered.Number, numbered))
                return numbered;
        }
    }

    /// <summary>True when the machine's files were written after the revision was added.</summary>
    public bool IsInPlace(int number) => File.Exists(MarkOf(number));

    /// <summary>Says that the machine's files hold the text of a revision.</summary>
    public void MarkInPlace(int number) => WholeFile.TryCreate(MarkOf(number), default);

    private string MarkOf(int number) => Path.Combine(_folder, string.Create(CultureInfo.InvariantCulture, $"revision-{number:D6}.in-place"));
}
