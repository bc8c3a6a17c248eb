namespace Proveout.Engine.Machine;

/// <summary>Reads machine files.</summary>
public static class MachineReader
{
    /// <summary>Reads a machine from one file, or from several that are taken together.</summary>
    /// <param name="files">The files, in the order in which their problems are reported.</param>
    /// <param name="catalogue">Part types that the machine may use besides its own.</param>
    /// <returns>The machine, or everything that is wrong with the files.</returns>
    public static Outcome<MachineDesign> Read(IReadOnlyList<SourceText> files, Catalogue catalogue)
    {
        var problems = new Problems();
        var documents = DocumentReader.Read(files, MachineDocument.Format, MachineDocument.Shape, problems);
        ReportSecond(documents, MachineDocument.MachineKey, problems);
        ReportSecond(documents, MachineDocument.MistakesKey, problems);
        ReportSecond(documents, MachineDocument.ReviewKey, problems);
        var head = documents.Select(file => file.Document.Machine).FirstOrDefault(found => found is not null);
        var assembly = new MachineAssembly(documents, catalogue, problems);
        // What stands in a file that cannot be read at all would seem to be missing everywhere else.
        if (documents.Count == files.Count)
            assembly.Check();
        if (files.Count == 0)
            problems.Add("no-file", new("(no file)", 0, 0), "There is no machine file.", "Give at least one.");
        else if (head is null && !problems.Any)
            problems.Add(
                "missing-key",
                new(files[0].File, 0, 0),
                "No file says what the machine is.",
                $"Add `{MachineDocument.MachineKey}` with its name.");
        var design = problems.Any ? null : assembly.ToDesign(head!);
        return design is null || problems.Any ? Outcome.Refused<MachineDesign>(problems.ToDiagnostics()) : Outcome.Of(design);
    }

    private static void ReportSecond(List<(Node Root, MachineDocument Document)> documents, string key, Problems problems)
    {
        var found = documents.Select(file => file.Root.Find(key)).OfType<Node>().ToList();
        foreach (var another in found.Skip(1))
            problems.Add(
                "duplicate-key",
                another.NamePlace,
                $"`{key}` stands in another file already, at {found[0].NamePlace}.",
                "Keep one of them.");
    }
}
