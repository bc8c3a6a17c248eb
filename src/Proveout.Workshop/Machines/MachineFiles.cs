using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Reads machines and the catalogue from disk.</summary>
/// <param name="catalogueFolder">Folder of the catalogue's files.</param>
public sealed class MachineFiles(string catalogueFolder)
{
    private const int MostFiles = 200;

    private readonly Lazy<Outcome<Catalogue>> _catalogue = new(() => ReadTexts(catalogueFolder) is { Value: { } texts }
        ? CatalogueReader.Read(texts)
        : Outcome.Refused<Catalogue>([Missing(catalogueFolder, "catalogue")]));

    /// <summary>The catalogue, read once.</summary>
    public Outcome<Catalogue> Catalogue => _catalogue.Value;

    /// <summary>Reads a machine from a file, or from all <c>*.yaml</c> files of a folder.</summary>
    public Outcome<LoadedMachine> Read(string path)
    {
        var texts = Texts(path);
        return texts.Value is null ? Outcome.Refused<LoadedMachine>(texts.Diagnostics) : Read(texts.Value, path);
    }

    /// <summary>The text of a machine's file, or of each <c>*.yaml</c> file of its folder, named by its path.</summary>
    public static Outcome<IReadOnlyList<SourceText>> Texts(string path) => ReadTexts(path);

    /// <summary>Reads a machine from texts.</summary>
    /// <param name="texts">The texts, each with the name of its file.</param>
    /// <param name="path">The file or folder that they are, or will be, the content of.</param>
    public Outcome<LoadedMachine> Read(IReadOnlyList<SourceText> texts, string path)
    {
        if (Catalogue.Value is not { } catalogue)
            return Outcome.Refused<LoadedMachine>(Catalogue.Diagnostics);
        var design = MachineReader.Read(texts, catalogue);
        if (design.Value is null)
            return Outcome.Refused<LoadedMachine>(design.Diagnostics);
        // Whatever is asked of a machine, its checks are computed sooner or later.
        return CampaignSize.Refuse(design.Value) is { } tooLarge
            ? Outcome.Refused<LoadedMachine>([tooLarge with { Place = new SourcePlace(path, 0, 0) }])
            : Outcome.Of(new LoadedMachine(IdOf(path), path, design.Value, FingerprintOf(texts.Select(text => (Path.GetFileName(text.File), text.Text)))) { Texts = texts });
    }

    private static Outcome<IReadOnlyList<SourceText>> ReadTexts(string path)
    {
        try
        {
            var files = Directory.Exists(path)
                ? [.. Directory.EnumerateFiles(path, "*.yaml").Order(StringComparer.Ordinal).Take(MostFiles)]
                : File.Exists(path) ? new[] { path } : [];
            if (files.Length == 0)
                return Outcome.Refused<IReadOnlyList<SourceText>>([Missing(path, "machine")]);
            var texts = files.Select(ReadText).ToArray();
            var diagnostics = texts.SelectMany(text => text.Diagnostics).ToArray();
            return diagnostics.Length > 0
                ? Outcome.Refused<IReadOnlyList<SourceText>>(diagnostics)
                : Outcome.Of<IReadOnlyList<SourceText>>([.. texts.Select(text => text.Value!)]);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return Outcome.Refused<IReadOnlyList<SourceText>>(
                [new Diagnostic("unreadable-file", new SourcePlace(path, 0, 0), "The file cannot be read.", "See that it exists and that you may read it.")]);
        }
    }

    private static Outcome<SourceText> ReadText(string file)
    {
        var size = new FileInfo(file).Length;
        return size > SourceText.LargestFile
            ? Outcome.Refused<SourceText>(
                [new Diagnostic("file-too-large", new SourcePlace(file, 0, 0), $"The file has {size} bytes; the most is {SourceText.LargestFile}.", "Split it over several files of a folder.")])
            : SourceText.Decode(file, File.ReadAllBytes(file));
    }

    private static Diagnostic Missing(string path, string what) => new(
        "no-such-file",
        new SourcePlace(path, 0, 0),
        $"There is no {what} file here, nor a folder with *.yaml files.",
        "Give the path of a machine file or of a machine's folder.");

    private static string IdOf(string path) =>
        Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));

    /// <summary>The fingerprint of a machine's files, in the order of their names.</summary>
    internal static string FingerprintOf(IEnumerable<(string Name, string Text)> texts) =>
        Fingerprint.OfText(string.Join('\f', texts.Select(text => text.Name + "\n" + text.Text)));
}
