using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Readings of a changed network asked for one by one, against the network built anew.</summary>
public sealed class SingleResistanceTests
{
    [Fact]
    public void Transfer_resistances_summed_along_the_elimination_tree_are_those_of_the_columns()
    {
        var random = new Random(3);
        for (var turn = 0; turn < 20; turn++)
        {
            var network = Random(random, 14, out _);
            for (var u = 0; u < network.NodeCount; u++)
                for (var v = 0; v < network.NodeCount; v++)
                    Assert.Equal(0, (double)(network.Transfer(u, v) - Solved(network, u, v)), 1e-18 + (1e-24 * (double)network.Transfer(u, v)));
        }
    }

    [Fact]
    public void Potentials_found_node_by_node_are_those_of_the_columns()
    {
        var random = new Random(5);
        for (var turn = 0; turn < 20; turn++)
        {
            var network = Random(random, 14, out _);
            var members = network.Islands.Members(network.Islands.Of(0));
            var flow = new FlowPotentials(network.FactorOf(network.Islands.Of(0)));
            foreach (var u in members)
            {
                flow.Start(network.IndexInIsland(u));
                foreach (var node in members.OrderBy(_ => random.Next()))
                    Assert.Equal(0, (double)(flow[network.IndexInIsland(node)] - Solved(network, u, node)), 1e-18 + (1e-24 * (double)Solved(network, node, node)));
            }
        }
    }

    [Fact]
    public void Resistances_after_several_changes_are_those_of_the_network_built_anew()
    {
        var random = new Random(4);
        for (var turn = 0; turn < 200; turn++)
        {
            var network = Random(random, 12, out var edges);
            var changed = new ChangedNetwork(network);
            var (changes, after) = Changes(random, network, edges);
            changed.Apply(changes);
            var rebuilt = new ResistorNetwork(network.NodeCount, after);
            for (var a = 0; a < network.NodeCount; a++)
                for (var b = 0; b < a; b++)
                    AssertSame(rebuilt.Resistance(a, b), changed.Ohms(a, b));
        }
    }

    private static DoubleDouble Solved(ResistorNetwork network, int u, int v) =>
        network.Islands.Of(u) == network.Islands.Of(v) ? network.Column(u)[network.IndexInIsland(v)] : DoubleDouble.Zero;

    private static (List<EdgeChange> Changes, Edge[] After) Changes(Random random, ResistorNetwork network, Edge[] edges)
    {
        List<EdgeChange> changes = [];
        var after = edges.ToList();
        foreach (var index in Enumerable.Range(0, edges.Length).OrderBy(_ => random.Next()).Take(3))
        {
            var takes = random.Next(2) == 0;
            var conductance = takes ? 0 : Conductance(random);
            changes.Add(takes ? EdgeChange.TakeAway(index, network.EdgeOf(index)) : EdgeChange.Set(index, network.EdgeOf(index), conductance));
            after[index] = edges[index] with { Conductance = conductance };
        }

        for (var turn = 0; turn < 2; turn++)
        {
            var edge = Edge(random, network.NodeCount);
            changes.Add(EdgeChange.Add(edge.A, edge.B, edge.Conductance));
            after.Add(edge);
        }

        return (changes, [.. after.Where(edge => edge.Conductance > 0)]);
    }

    private static ResistorNetwork Random(Random random, int nodes, out Edge[] edges)
    {
        edges = [.. Enumerable.Range(0, nodes + 2).Select(_ => Edge(random, nodes))];
        return new ResistorNetwork(nodes, edges);
    }

    private static Edge Edge(Random random, int nodes)
    {
        var a = random.Next(nodes);
        return new Edge(a, (a + 1 + random.Next(nodes - 1)) % nodes, Conductance(random));
    }

    // From a milliohm to ten megohms.
    private static double Conductance(Random random) => Math.Pow(10, 3 - (10 * random.NextDouble()));

    private static void AssertSame(double expected, double actual) =>
        Assert.True(expected.Equals(actual) || Math.Abs(expected - actual) <= 1e-9 * expected, $"{expected} is not {actual}");
}
