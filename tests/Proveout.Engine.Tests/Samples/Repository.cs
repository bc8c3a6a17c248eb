using Proveout.Engine.Machine;

namespace Proveout.Engine.Tests.Samples;

/// <summary>The catalogue and the samples as they lie in the repository.</summary>
internal static class Repository
{
    /// <summary>The sample machines, by folder name.</summary>
    public static readonly string[] SampleNames = ["alderbrook", "pennywort", "quarrymoor"];

    private static readonly Lazy<Catalogue> LazyCatalogue = new(() => Value(CatalogueReader.Read(Texts(Folder("catalogue")))));

    public static Catalogue Catalogue => LazyCatalogue.Value;

    public static string Folder(params string[] below) => Path.Combine([Root(), .. below]);

    public static Outcome<MachineDesign> Read(string sample) => MachineReader.Read(Texts(Folder("samples", sample)), Catalogue);

    public static MachineDesign Design(string sample) => Value(Read(sample));

    public static SourceText[] Texts(string folder) =>
        [.. Directory.GetFiles(folder, "*.yaml").Order(StringComparer.Ordinal).Select(file => new SourceText(Path.GetFileName(file), File.ReadAllText(file)))];

    private static T Value<T>(Outcome<T> outcome)
        where T : class =>
        outcome.Value ?? throw new InvalidOperationException(string.Join(Environment.NewLine, outcome.Diagnostics));

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
