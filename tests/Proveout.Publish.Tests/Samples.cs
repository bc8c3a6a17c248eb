using Proveout.Engine.Machine;

namespace Proveout.Publish.Tests;

/// <summary>The sample machines as they lie in the repository.</summary>
internal static class Samples
{
    public static MachineDesign Design(string name)
    {
        var catalogue = CatalogueReader.Read(Texts("catalogue")).Value!;
        return MachineReader.Read(Texts(Path.Combine("samples", name)), catalogue).Value!;
    }

    private static SourceText[] Texts(string folder) => Directory.GetFiles(Path.Combine(Root(), folder), "*.yaml")
        .Order(StringComparer.Ordinal)
        .Select(file => new SourceText(Path.GetFileName(file), File.ReadAllText(file)))
        .ToArray();

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
