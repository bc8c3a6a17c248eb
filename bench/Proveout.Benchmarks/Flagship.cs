using Proveout.Engine.Machine;

namespace Proveout.Benchmarks;

/// <summary>The largest sample machine, read from the repository.</summary>
internal static class Flagship
{
    public static Catalogue Catalogue() => Value(CatalogueReader.Read(Texts("catalogue")));

    public static MachineDesign Read() => Value(MachineReader.Read(Texts("samples", "alderbrook"), Catalogue()));

    private static SourceText[] Texts(params string[] below) =>
    [
        .. Directory.GetFiles(Path.Combine([Root(), .. below]), "*.yaml")
            .Order(StringComparer.Ordinal)
            .Select(file => new SourceText(Path.GetFileName(file), File.ReadAllText(file))),
    ];

    /// <summary>Where something of the repository is.</summary>
    public static string PathOf(params string[] below) => Path.Combine([Root(), .. below]);

    private static T Value<T>(Outcome<T> outcome)
        where T : class =>
        outcome.Value ?? throw new InvalidOperationException(string.Join(Environment.NewLine, outcome.Diagnostics));

    /// <summary>Folder of the repository.</summary>
    public static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The benchmarks do not run inside the repository.");
    }

    /// <summary>Another sample machine.</summary>
    public static MachineDesign Sample(string name) => Value(MachineReader.Read(Texts("samples", name), Value(CatalogueReader.Read(Texts("catalogue")))));
}
