namespace Proveout.Engine.Machine;

/// <summary>Reads several files of one format.</summary>
internal static class DocumentReader
{
    /// <summary>What could be read of each file, with its tree.</summary>
    public static List<(Node Root, T Document)> Read<T>(
        IReadOnlyList<SourceText> files,
        FormatName format,
        RecordShape<T> shape,
        Problems problems)
    {
        var documents = new List<(Node, T)>(files.Count);
        foreach (var file in files)
            if (NodeReader.Read(file, problems) is { } root
                && format.IsStatedBy(root, problems)
                && shape.TryRead(root, problems, out var document))
                documents.Add((root, document));
        return documents;
    }
}
