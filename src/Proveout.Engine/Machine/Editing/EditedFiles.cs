namespace Proveout.Engine.Machine;

/// <summary>The files of one machine, each with its tree.</summary>
internal sealed class EditedFiles(IReadOnlyList<EditedFile> files)
{
    public IReadOnlyList<EditedFile> All => files;

    /// <summary>The files, or what keeps their text from being read.</summary>
    public static Outcome<EditedFiles> Read(IReadOnlyList<SourceText> texts)
    {
        var problems = new Problems();
        var read = texts.Select(text => EditedFile.Parse(text, problems)).OfType<EditedFile>().ToArray();
        return problems.Any ? Outcome.Refused<EditedFiles>(problems.ToDiagnostics()) : Outcome.Of(new EditedFiles(read));
    }

    /// <summary>The file that holds a thing; null when none does.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="mayBeNew">True when the file that holds its section will do.</param>
    public EditedFile? Holding(EditedThing thing, bool mayBeNew) =>
        files.FirstOrDefault(file => file.Root.Find(thing.Section)?.Find(thing.Name) is not null)
        ?? (mayBeNew ? files.FirstOrDefault(file => file.Root.Find(thing.Section) is not null) : null);

    /// <summary>The file that a new thing goes into: that of its neighbour when it holds such things, else the last that does, else that of the machine's head.</summary>
    public EditedFile? ForNew(EditedThing thing, string neighbour) =>
        files.LastOrDefault(file => file.Root.Find(thing.Section) is not null && file.Root.Find(MachineDocument.PartsKey)?.Find(neighbour) is not null)
        ?? files.LastOrDefault(file => file.Root.Find(thing.Section) is not null)
        ?? files.FirstOrDefault(file => file.Root.Find(MachineDocument.MachineKey) is not null)
        ?? (files.Count > 0 ? files[0] : null);

    /// <summary>The files with one of them changed.</summary>
    public EditOutcome With(EditedFile changed) => new(new([.. files.Select(file => file.Source.File == changed.Source.File ? changed : file)]), null);
}
