using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Ways through many blocks, whose volts are found of a whole island at once.</summary>
public sealed class IslandVoltsTests
{
    private const int Rungs = 40;

    // A rail of single resistors, with a loop hung on every fourth of its nodes.
    private static Edge[] Rail(Random random) =>
    [
        .. Enumerable.Range(0, Rungs - 1).Select(node => new Edge(node, node + 1, Siemens(random))),
        .. Enumerable.Range(0, Rungs / 4).SelectMany(loop => (Edge[])
        [
            new(4 * loop, Rungs + (2 * loop), Siemens(random)),
            new(Rungs + (2 * loop), Rungs + (2 * loop) + 1, Siemens(random)),
            new(Rungs + (2 * loop) + 1, 4 * loop, Siemens(random)),
        ]),
    ];

    private static double Siemens(Random random) => Math.Pow(10, 4 * random.NextDouble());

    [Fact]
    public void Volts_between_any_two_nodes_follow_from_four_resistances() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(300), Prop.ForAll(RandomNetwork.Any, random =>
    {
        var (network, volts) = (random.Network, new IslandVolts(random.Network));
        var nodes = Enumerable.Range(0, random.NodeCount).Where(node => network.Islands.Of(node) == network.Islands.Of(0)).ToArray();
        volts.Take(nodes[0], nodes[^1]);

        // Reciprocity and superposition.
        return nodes.All(one => nodes.All(other =>
            Math.Abs(volts.Between(one, other) - ((network.Resistance(nodes[^1], one) - network.Resistance(nodes[0], one) - network.Resistance(nodes[^1], other) + network.Resistance(nodes[0], other)) / 2))
            <= 1e-9 * (network.Resistance(nodes[0], one) + network.Resistance(nodes[^1], other) + network.Resistance(nodes[0], nodes[^1]))));
    }));

    [Fact]
    public void Nodes_between_which_no_current_flows_have_no_volts_at_all()
    {
        var network = new ResistorNetwork(4, [new(0, 1, 3), new(1, 2, 7), new(1, 3, 11)]);
        var volts = new IslandVolts(network);

        volts.Take(0, 2);

        Assert.Equal(0, volts.Between(1, 3));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Every_port_of_a_long_rail_reads_as_that_of_a_network_built_anew(int seed)
    {
        var random = new Random(seed);
        var edges = Rail(random);
        var network = new ResistorNetwork(Rungs + (Rungs / 2), edges);
        (int A, int B)[] pairs = [.. from a in Enumerable.Range(0, network.NodeCount) from b in Enumerable.Range(0, a) select (a, b)];
        var added = new Edge(1, Rungs - 2, Siemens(random));
        var (changed, anew) = (new ChangedPorts(new Ports(network, pairs)), new ResistorNetwork(network.NodeCount, [.. edges, added]));

        changed.Apply([EdgeChange.Add(added.A, added.B, added.Conductance)]);

        Assert.All(pairs.Index(), port => Assert.True(Readings.AreSame(
            anew.Resistance(port.Item.A, port.Item.B),
            changed.Alters(port.Index, out var ohms) ? ohms : network.Resistance(port.Item.A, port.Item.B),
            1e-9)));
    }

    // Some thousand ports end on two islands that a wire joins: what each node has to the ends of the wire is kept from port to port.
    [Fact]
    public void Every_port_between_two_rails_that_a_wire_joins_reads_as_that_of_a_network_built_anew()
    {
        var random = new Random(4);
        var (one, other) = (Rail(random), Rail(random));
        var count = Rungs + (Rungs / 2);
        Edge[] edges = [.. one, .. other.Select(edge => edge with { A = edge.A + count, B = edge.B + count })];
        var network = new ResistorNetwork(2 * count, edges);
        (int A, int B)[] pairs = [.. from a in Enumerable.Range(0, count) from b in Enumerable.Range(count, count) select (a, b)];
        var changed = new ChangedPorts(new Ports(network, pairs));
        foreach (var (a, b) in new[] { (3, count + 20), (7, count + 20), (7, count + 41) })
        {
            var anew = new ResistorNetwork(network.NodeCount, [.. edges, new(a, b, 2)]);

            changed.Apply([EdgeChange.Add(a, b, 2)]);

            Assert.All(pairs.Index(), port => Assert.True(
                changed.Alters(port.Index, out var ohms) && Readings.AreSame(anew.Resistance(port.Item.A, port.Item.B), ohms, 1e-9)));
        }
    }
}
