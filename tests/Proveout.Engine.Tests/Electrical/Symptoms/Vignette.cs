using System.Globalization;
using Proveout.Engine.Faults;
using Proveout.Engine.Tests.Samples;
using YamlDotNet.RepresentationModel;

namespace Proveout.Engine.Tests.Electrical.Symptoms;

/// <summary>A case of tests/cases/diagnosis: what was seen and read, and the mistake that it was.</summary>
internal sealed record Vignette(string Machine, IReadOnlyList<Reading> Seen, IReadOnlyList<Reading> Read, IReadOnlyList<string> Mistakes, int Within)
{
    public static string Root { get; } = Repository.Folder("tests", "cases", "diagnosis");

    public static IEnumerable<string> Names => Directory.GetDirectories(Root).Where(folder => File.Exists(Path.Combine(folder, "case.yaml"))).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal);

    public static Vignette Of(string name)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(File.ReadAllText(Path.Combine(Root, name, "case.yaml"))));
        var root = (YamlMappingNode)stream.Documents.Single().RootNode;
        var machine = Text(root, "machine");
        return new(
            machine == "own" ? Path.Combine(Root, name, "machine") : Repository.Folder("samples", machine),
            [.. Items(root, "seen")],
            [.. Items(root, "read")],
            [.. ((YamlSequenceNode)root["mistakes"]).Select(node => ((YamlScalarNode)node).Value!)],
            int.Parse(Text(root, "within"), CultureInfo.InvariantCulture));
    }

    private static IEnumerable<Reading> Items(YamlMappingNode root, string key) =>
        root.Children.TryGetValue(key, out var list)
            ? ((YamlSequenceNode)list).Cast<YamlMappingNode>().Select(item => new Reading(Text(item, "check"), Number(Text(item, "value"))))
            : [];

    private static double Number(string text) => text switch
    {
        "yes" => 1,
        "no" => 0,
        "over range" => ReadingInterval.OverRange,
        _ => double.Parse(text, CultureInfo.InvariantCulture),
    };

    private static string Text(YamlMappingNode node, string key) => ((YamlScalarNode)node[key]).Value!;
}
