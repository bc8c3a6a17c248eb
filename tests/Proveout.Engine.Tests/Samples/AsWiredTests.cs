using Proveout.Engine.Machine;
using YamlDotNet.RepresentationModel;

namespace Proveout.Engine.Tests.Samples;

public sealed class AsWiredTests
{
    private static readonly string[] Kinds =
    [
        "conductor-missing", "end-on-neighbour", "ends-swapped", "bridge", "poor-joint",
        "jumper-wrong", "jumper-missing", "wrong-value", "reversed-part", "connectors-exchanged",
    ];

    public static TheoryData<string> Samples => [.. Repository.SampleNames];

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_build_has_at_least_two_mistakes_of_known_kinds_each_with_its_story(string sample)
    {
        var mistakes = Mistakes(sample);

        Assert.InRange(mistakes.Count, 2, 10);
        Assert.All(mistakes, mistake => Assert.Contains(One(mistake, "kind"), Kinds));
        Assert.All(mistakes, mistake => Assert.EndsWith(".", One(mistake, "story"), StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Conductors_terminals_and_connectors_of_mistakes_exist(string sample)
    {
        var design = Repository.Design(sample);
        foreach (var mistake in Mistakes(sample))
        {
            Assert.All(Many(mistake, "conductor", "conductors"), id => Assert.Contains(design.Conductors, conductor => conductor.Id == id));
            Assert.All(Many(mistake, "at", "lands-on", "terminals"), text => Assert.NotNull(design.FindTerminal(TerminalReference.TryParse(text)!.Value)));
            Assert.All(Many(mistake, "connectors"), text => Assert.NotNull(FindConnector(design, text)));
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_conductor_end_that_went_astray_belongs_where_the_mistake_says(string sample)
    {
        var design = Repository.Design(sample);
        foreach (var mistake in Mistakes(sample).Where(mistake => Many(mistake, "at").Any()))
            Assert.All(
                Many(mistake, "conductor", "conductors").Zip(Many(mistake, "at"), (id, at) => (Conductor: design.Conductors.Single(conductor => conductor.Id == id), at)),
                pair => Assert.Contains(pair.at, new[] { pair.Conductor.From.ToString(), pair.Conductor.To.ToString() }));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_wrong_jumper_sits_in_another_position_than_designed_and_exchanged_plugs_are_equal(string sample)
    {
        var design = Repository.Design(sample);
        foreach (var mistake in Mistakes(sample).Where(mistake => One(mistake, "kind") == "jumper-wrong"))
        {
            var part = design.FindPart(One(mistake, "part"))!;
            var jumper = part.Type.Jumpers.Single(jumper => jumper.Name == One(mistake, "jumper"));
            Assert.Contains(jumper.Positions, position => position.Name == One(mistake, "position"));
            Assert.DoesNotContain(part.Jumpers, setting => setting.Jumper == jumper.Name && setting.Position == One(mistake, "position"));
        }

        foreach (var plugs in Mistakes(sample).Where(mistake => One(mistake, "kind") == "connectors-exchanged").Select(mistake => Many(mistake, "connectors").Select(text => FindConnector(design, text)!).ToList()))
            Assert.Equal((plugs[0].Family, plugs[0].Terminals.Count, true), (plugs[1].Family, plugs[1].Terminals.Count, plugs[1].Pluggable));
    }

    private static Connector? FindConnector(MachineDesign design, string text)
    {
        var reference = TerminalReference.TryParse(text)!.Value;
        return design.FindPart(reference.Part)?.Type.Connectors.FirstOrDefault(connector => connector.Name == reference.Terminal);
    }

    private static List<YamlMappingNode> Mistakes(string sample)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(File.ReadAllText(Repository.Folder("samples", $"{sample}-as-wired", "mistakes.yaml"))));
        var root = (YamlMappingNode)stream.Documents.Single().RootNode;
        Assert.Equal("proveout-as-wired 1", One(root, "format"));
        Assert.Equal($"../{sample}", One(root, "machine"));
        return [.. ((YamlSequenceNode)root["mistakes"]).Cast<YamlMappingNode>()];
    }

    private static string One(YamlMappingNode node, string key) => Many(node, key).Single();

    private static IEnumerable<string> Many(YamlMappingNode node, params string[] keys) =>
        from key in keys
        where node.Children.ContainsKey(key)
        from item in node[key] is YamlSequenceNode list ? list.Children : [node[key]]
        select ((YamlScalarNode)item).Value!;
}
