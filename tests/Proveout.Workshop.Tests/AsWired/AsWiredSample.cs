using System.Collections.Concurrent;
using Proveout.Engine.Faults;
using YamlDotNet.RepresentationModel;

namespace Proveout.Workshop.Tests.AsWired;

/// <summary>A sample with the mistakes that its builder made, and the readings of that build.</summary>
public sealed class AsWiredSample
{
    private static readonly ConcurrentDictionary<string, Lazy<AsWiredSample>> Read = new();

    private AsWiredSample(string name)
    {
        Planned = Samples.Planned(name);
        Mistakes = [.. MistakesOf(Folder("samples", $"{name}-as-wired", "mistakes.yaml")).Select(FaultOf)];
        Readings = StoredReadings.Read(Folder("samples", $"{name}-as-wired", "readings.txt")).Value!.Of(Planned).Value!;
    }

    public static TheoryData<string> Names { get; } = ["alderbrook", "pennywort", "quarrymoor"];

    public PlannedMachine Planned { get; }

    /// <summary>The faults that the builder made.</summary>
    public IReadOnlyList<Fault> Mistakes { get; }

    public IReadOnlyList<TypedReading> Readings { get; }

    public static AsWiredSample Of(string name) => Read.GetOrAdd(name, _ => new Lazy<AsWiredSample>(() => new AsWiredSample(name))).Value;

    public bool IsCaught(Fault mistake) => Planned.Plan.Caught.Any(fault => Planned.Dictionary.Faults[fault].Id == mistake.Id);

    // The identifier of a fault holds everything that the mistake names, in an order of its own.
    private Fault FaultOf(YamlMappingNode mistake)
    {
        var kinds = One(mistake, "kind") switch
        {
            "ends-swapped" => new[] { "ends-swapped", "part-reversed" },
            "conductor-missing" => ["conductor-missing", "bond-missing"],
            var kind => [kind],
        };
        string[] names =
        [
            .. Many(mistake, "conductor", "conductors", "at", "lands-on", "position"),
            .. Many(mistake, "connectors").SelectMany(connector => connector.Split('.', 2)),
            .. Many(mistake, "part").Select(part => $"{part}.{One(mistake, "jumper")}"),
        ];
        return Planned.Dictionary.Faults.Single(fault => kinds.Contains(fault.Kind) && names.ToHashSet().SetEquals(fault.Id.Split(':').Skip(1)));
    }

    private static IEnumerable<YamlMappingNode> MistakesOf(string path)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(File.ReadAllText(path)));
        return ((YamlSequenceNode)stream.Documents.Single().RootNode["mistakes"]).Cast<YamlMappingNode>();
    }

    private static string One(YamlMappingNode node, string key) => Many(node, key).Single();

    private static IEnumerable<string> Many(YamlMappingNode node, params string[] keys) =>
        from key in keys
        where node.Children.ContainsKey(key)
        from item in node[key] is YamlSequenceNode list ? list.Children : [node[key]]
        select ((YamlScalarNode)item).Value!;

    private static string Folder(params string[] path)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return Path.Combine([folder!.FullName, .. path]);
    }
}
