using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Changes of a large island, and of a block so large that its columns are not kept, against the network built anew.</summary>
public sealed class LargeIslandTests
{
    // The columns of a block of more than 2048 nodes are not kept.
    private const int Nodes = 2200;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Resistances_after_changes_of_a_large_island_are_those_of_the_network_built_anew(bool isOneBlock)
    {
        var random = new Random(20261128);
        var edges = Edges(random, isOneBlock);
        var network = new ResistorNetwork(Nodes, edges);
        (int, int)[] pairs = [.. Enumerable.Range(0, 40).Select(_ => (random.Next(Nodes / 2), (Nodes / 2) + random.Next(Nodes / 2)))];
        var changed = new ChangedPorts(new Ports(network, pairs));
        for (var turn = 0; turn < 25; turn++)
        {
            int[] taken = [.. Enumerable.Range(0, 3).Select(_ => random.Next(edges.Length)).Distinct()];
            var added = new Edge(random.Next(Nodes / 2), (Nodes / 2) + random.Next(Nodes / 2), 0.01);
            changed.Apply([.. taken.Select(index => EdgeChange.TakeAway(index, edges[index])), EdgeChange.Add(added.A, added.B, added.Conductance)]);
            var rebuilt = new ResistorNetwork(Nodes, [.. edges.Where((_, index) => !taken.Contains(index)), added]);
            for (var port = 0; port < pairs.Length; port++)
            {
                var expected = rebuilt.Resistance(pairs[port].Item1, pairs[port].Item2);
                var ohms = changed.Alters(port, out var after) ? after : network.Resistance(pairs[port].Item1, pairs[port].Item2);
                Assert.True(expected.Equals(ohms) || Math.Abs((ohms / expected) - 1) < 1e-9, $"{ohms} for {expected}");
            }
        }
    }

    // A tree with loops, or a ring with chords, over eight decades.
    private static Edge[] Edges(Random random, bool isRing) =>
    [
        .. Enumerable.Range(1, Nodes - 1).Select(node => new Edge(isRing ? node - 1 : random.Next(Math.Max(0, node - 30), node), node, Math.Pow(10, random.Next(-5, 4)))),
        .. Enumerable.Range(0, 200).Select(_ => random.Next(Nodes - 40)).Select(node => new Edge(node, node + 2 + random.Next(38), Math.Pow(10, random.Next(-5, 4)))),
        .. isRing ? new[] { new Edge(Nodes - 1, 0, 1) } : [],
    ];
}
