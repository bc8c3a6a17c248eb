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
        var head = OneHead(documents, problems);
        var assembly = new MachineAssembly(documents, catalogue, problems);
        assembly.Check();
        if (files.Count == 0)
            problems.Add("no-file", new("(no file)", 0, 0), "There is no machine file.", "Give at least one.");
        else if (head is null && !problems.Any)
            problems.Add(
                "missing-key",
                new(files[0].File, 0, 0),
                "No file says what the machine is.",
                $"Add `{MachineDocument.MachineKey}` with its name.");
        return problems.Any ? Outcome.Refused<MachineDesign>(problems.ToDiagnostics()) : Outcome.Of(assembly.ToDesign(head!));
    }

    private static MachineHead? OneHead(List<(Node Root, MachineDocument Document)> documents, Problems problems)
    {
        var heads = documents.Select(file => file.Root.Find(MachineDocument.MachineKey)).OfType<Node>().ToList();
        foreach (var another in heads.Skip(1))
            problems.Add(
                "duplicate-key",
                another.NamePlace,
                $"`{MachineDocument.MachineKey}` stands in another file already, at {heads[0].NamePlace}.",
                "Keep one of them.");
        return documents.Select(file => file.Document.Machine).FirstOrDefault(head => head is not null);
    }
}
