namespace Proveout.Engine.Machine;

/// <summary>Reads catalogue files.</summary>
public static class CatalogueReader
{
    /// <summary>Takes the part types of several catalogue files together.</summary>
    /// <param name="files">The files, in the order in which their problems are reported.</param>
    /// <returns>The catalogue, or everything that is wrong with the files.</returns>
    public static Outcome<Catalogue> Read(IReadOnlyList<SourceText> files)
    {
        var problems = new Problems();
        var documents = DocumentReader.Read(files, CatalogueDocument.Format, CatalogueDocument.Shape, problems);
        var types = new Section<PartType>(
            documents.Select(file => (file.Root.Find("types"), file.Document.Types)),
            PartTypeShapes.Types,
            problems);
        foreach (var (type, node) in types.Entries)
            PartTypeChecks.Check(type, node, problems);
        return problems.Any
            ? Outcome.Refused<Catalogue>(problems.ToDiagnostics())
            : Outcome.Of(new Catalogue(types.Entries.Select(entry => entry.Item).ToValueList()));
    }
}
