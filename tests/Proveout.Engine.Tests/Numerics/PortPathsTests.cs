using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Which ports a change can alter, against the network built anew.</summary>
public sealed class PortPathsTests
{
    [Fact]
    public void A_port_that_is_not_asked_reads_as_before() =>
        Prop.ForAll(RandomNetwork.Any, random =>
        {
            var network = random.Network;
            var pairs = Pairs(random.NodeCount);
            var asked = Asked(network, pairs, random.Changes);
            var after = new ResistorNetwork(random.NodeCount, random.EdgesAfter);
            foreach (var (port, (a, b)) in pairs.Index())
                if (!asked.Contains(port) && network.Islands.Of(a) == network.Islands.Of(b))
                    Assert.Equal(1, after.Resistance(a, b) / network.Resistance(a, b), 1e-9);
        }).QuickCheckThrowOnFailure();

    [Fact]
    public void A_branch_of_a_tree_is_left_alone_by_a_change_in_another()
    {
        // 0 - 1 - 2 and 0 - 3 - 4; a resistor of the first branch goes.
        Edge[] edges = [new(0, 1, 1), new(1, 2, 1), new(0, 3, 1), new(3, 4, 1)];
        var network = new ResistorNetwork(5, edges);

        var asked = Asked(network, [(0, 2), (1, 4), (0, 4), (3, 4), (0, 1)], [EdgeChange.TakeAway(1, edges[1])]);

        Assert.Equal([0], asked);
    }

    [Fact]
    public void A_loop_is_asked_as_a_whole()
    {
        // A square 0 - 1 - 2 - 3 with a tail 3 - 4; a resistor of the square changes.
        Edge[] edges = [new(0, 1, 1), new(1, 2, 1), new(2, 3, 1), new(3, 0, 1), new(3, 4, 1)];
        var network = new ResistorNetwork(5, edges);

        var asked = Asked(network, [(2, 3), (0, 4), (3, 4)], [EdgeChange.Set(0, edges[0], 2)]);

        Assert.Equal([0, 1], asked.Order().Take(2));
    }

    private static (int, int)[] Pairs(int nodes) =>
        [.. from a in Enumerable.Range(0, nodes) from b in Enumerable.Range(0, a) select (a, b)];

    private static HashSet<int> Asked(ResistorNetwork network, (int, int)[] pairs, List<EdgeChange> changes)
    {
        var mask = new ulong[(pairs.Length / 64) + 1];
        new PortPaths(new Ports(network, pairs)).Add(changes, mask);
        return [.. Enumerable.Range(0, pairs.Length).Where(port => (mask[port / 64] >> (port % 64) & 1) != 0)];
    }
}
