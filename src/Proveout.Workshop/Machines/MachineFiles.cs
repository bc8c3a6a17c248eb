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
        if (Catalogue.Value is not { } catalogue)
            return Outcome.Refused<LoadedMachine>(Catalogue.Diagnostics);
        var texts = ReadTexts(path);
        if (texts.Value is null)
            return Outcome.Refused<LoadedMachine>(texts.Diagnostics);
        var design = MachineReader.Read(texts.Value, catalogue);
        if (design.Value is null)
            return Outcome.Refused<LoadedMachine>(design.Diagnostics);
        // Whatever is asked of a machine, its checks are computed sooner or later.
        return CampaignSize.Refuse(design.Value) is { } tooLarge
            ? Outcome.Refused<LoadedMachine>([tooLarge with { Place = new SourcePlace(path, 0, 0) }])
            : Outcome.Of(new LoadedMachine(IdOf(path), path, design.Value, FingerprintOf(texts.Value.Select(text => (Path.GetFileName(text.File), text.Text)))) { Texts = texts.Value });
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
