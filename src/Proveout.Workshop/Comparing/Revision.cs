using System.Security.Cryptography;
using System.Text;
using Proveout.Engine.Machine;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Proveout.Workshop;

/// <summary>Reads a machine, or a machine as it was built: a folder whose <c>mistakes.yaml</c> names a design and what is otherwise.</summary>
public static class Revision
{
    private const string Format = "proveout-as-wired 1";

    /// <summary>The machine, or everything that is wrong with its files.</summary>
    /// <param name="files">Reads designs.</param>
    /// <param name="path">A machine file, the folder of a machine, or a folder with <c>mistakes.yaml</c>.</param>
    public static Outcome<LoadedMachine> Read(MachineFiles files, string path)
    {
        var file = Path.Combine(path, "mistakes.yaml");
        if (!File.Exists(file))
            return files.Read(path);
        try
        {
            return Built(files, path, file, File.ReadAllText(file));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return Refuse("unreadable-file", new SourcePlace(file, 0, 0), "The file cannot be read.", "See that it exists and that you may read it.");
        }
        catch (YamlException syntax)
        {
            return Refuse("bad-yaml", PlaceOf(file, syntax.Start), "This is no YAML.", "Look at its brackets and its indentation.");
        }
    }

    private static Outcome<LoadedMachine> Built(MachineFiles files, string path, string file, string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        if (stream.Documents is not [{ RootNode: YamlMappingNode root }] || Many(root, "format") is not [Format] || Many(root, "machine") is not [var machine])
            return Refuse("no-as-wired-file", new SourcePlace(file, 0, 0), $"This does not begin with `format: {Format}` and the machine's path.", "samples/README.md shows such a file.");
        var read = files.Read(Path.Combine(path, machine));
        if (read.Value is not { } loaded)
            return read;
        var design = loaded.Design;
        foreach (var mistake in MistakesOf(root, file))
            if (AsWiredDesign.With(design, mistake) is { } made)
                design = made;
            else
                return Refuse(
                    "mistake-does-not-fit",
                    mistake.Place,
                    $"This {mistake.Kind} does not fit {design.Name}, or no design can hold it.",
                    "Compare what it names with the machine file; samples/README.md lists what each kind names. A poor joint is no change of a design: its readings tell it.");
        var fingerprint = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(loaded.Fingerprint + text)));
        return Outcome.Of(new LoadedMachine(Path.GetFileName(Path.TrimEndingDirectorySeparator(path)), path, design, fingerprint));
    }

    private static IEnumerable<AsWiredMistake> MistakesOf(YamlMappingNode root, string file) =>
        from node in root.Children.TryGetValue("mistakes", out var list) && list is YamlSequenceNode items ? items.Children : []
        let mapping = node as YamlMappingNode ?? new YamlMappingNode()
        select new AsWiredMistake(
            string.Concat(Many(mapping, "kind")),
            mapping.Children.Keys.OfType<YamlScalarNode>().ToDictionary(key => key.Value!, key => Many(mapping, key.Value!), StringComparer.Ordinal),
            PlaceOf(file, node.Start));

    private static string[] Many(YamlMappingNode node, string key) => node.Children.TryGetValue(key, out var value)
        ? [.. (value is YamlSequenceNode list ? list.Children : [value]).OfType<YamlScalarNode>().Select(scalar => scalar.Value ?? "")]
        : [];

    private static SourcePlace PlaceOf(string file, Mark mark) => new(file, (int)mark.Line, (int)mark.Column);

    private static Outcome<LoadedMachine> Refuse(string rule, SourcePlace place, string message, string mend) =>
        Outcome.Refused<LoadedMachine>([new Diagnostic(rule, place, message, mend)]);
}
