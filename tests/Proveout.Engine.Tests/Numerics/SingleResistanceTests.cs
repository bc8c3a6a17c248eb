using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Readings of a changed network asked for one by one, against the network built anew.</summary>
public sealed class SingleResistanceTests
{
    [Fact]
    public void Transfer_resistances_summed_along_the_blocks_are_those_of_each_island_factored_as_a_whole()
    {
        var random = new Random(3);
        for (var turn = 0; turn < 200; turn++)
        {
            var network = Random(random, 14, out _);
            for (var island = 0; island < network.Islands.Count; island++)
                foreach (var u in network.Islands.Members(island))
                {
                    var column = Solved(network, island, u);
                    foreach (var v in network.Islands.Members(island))
                        Assert.Equal(0, (double)(network.Blocks.Transfer(u, v) - column(v)), 1e-18 + (1e-24 * (double)column(v)));
                }
        }
    }

    [Fact]
    public void Potentials_of_a_flow_are_to_a_constant_those_of_each_island_factored_as_a_whole()
    {
        var random = new Random(5);
        for (var turn = 0; turn < 200; turn++)
        {
            var network = Random(random, 14, out _);
            for (var island = 0; island < network.Islands.Count; island++)
                foreach (var entry in network.Islands.Members(island))
                    foreach (var exit in network.Islands.Members(island).Where(exit => exit != entry))
                        AssertPotentials(network, island, entry, exit);
        }
    }

    private static void AssertPotentials(ResistorNetwork network, int island, int entry, int exit)
    {
        var (ofEntry, ofExit, flow) = (Solved(network, island, entry), Solved(network, island, exit), network.Blocks.Flow(entry, exit));
        foreach (var node in network.Islands.Members(island))
        {
            var expected = ofEntry(node) - ofExit(node) - (ofEntry(exit) - ofExit(exit));
            Assert.Equal(0, (double)(network.Blocks.Volts(flow, node) - network.Blocks.Volts(flow, exit) - expected), 1e-18 + (1e-24 * (double)ofEntry(entry)));
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

    // Volts of each node of an island for one ampere fed into one of them and taken from the anchor, by a factor of the whole island.
    private static Func<int, DoubleDouble> Solved(ResistorNetwork network, int island, int fed)
    {
        int[] members = [.. network.Islands.Members(island).Where(node => node != network.AnchorOf(island))];
        if (fed == network.AnchorOf(island))
            return _ => DoubleDouble.Zero;
        var toAnchor = new DoubleDouble[members.Length];
        List<Edge> edges = [];
        foreach (var edge in Enumerable.Range(0, network.EdgeCount).Select(network.EdgeOf).Where(edge => network.Islands.Of(edge.A) == island))
            if (Array.IndexOf(members, edge.A) is var a && Array.IndexOf(members, edge.B) is var b && a >= 0 && b >= 0)
                edges.Add(new Edge(a, b, edge.Conductance));
            else
                toAnchor[Math.Max(a, b)] += edge.Conductance;
        var column = new DoubleDouble[members.Length];
        new LaplacianFactor(members.Length, edges, toAnchor).Solve(Array.IndexOf(members, fed), column);
        return node => node == network.AnchorOf(island) ? DoubleDouble.Zero : column[Array.IndexOf(members, node)];
    }

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
