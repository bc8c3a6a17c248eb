using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Which ports a change can alter, each a group of its own, against the network built anew.</summary>
public sealed class PortPathsTests
{
    [Fact]
    public void A_port_that_is_not_asked_reads_as_before() =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(300), Prop.ForAll(RandomNetwork.Any, random =>
        {
            var network = random.Network;
            var pairs = Pairs(random.NodeCount);
            var asked = Asked(network, pairs, random.Changes);
            var after = new ResistorNetwork(random.NodeCount, random.EdgesAfter);
            return pairs.Index().All(item =>
                asked.Contains(item.Index)
                || network.Islands.Of(item.Item.Item1) != network.Islands.Of(item.Item.Item2)
                || Math.Abs((after.Resistance(item.Item.Item1, item.Item.Item2) / network.Resistance(item.Item.Item1, item.Item.Item2)) - 1) <= 1e-9);
        }));

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

    [Fact]
    public void Of_two_loops_that_share_one_node_each_is_asked_alone()
    {
        // Triangles 0 - 1 - 2 and 0 - 3 - 4; a resistor of the first changes.
        Edge[] edges = [new(0, 1, 1), new(1, 2, 1), new(2, 0, 1), new(0, 3, 1), new(3, 4, 1), new(4, 0, 1)];
        var network = new ResistorNetwork(5, edges);

        var asked = Asked(network, [(1, 2), (3, 4), (0, 4), (2, 3), (0, 1)], [EdgeChange.Set(1, edges[1], 2)]);

        Assert.Equal([0, 3, 4], asked.Order());
    }

    private static (int, int)[] Pairs(int nodes) =>
        [.. from a in Enumerable.Range(0, nodes) from b in Enumerable.Range(0, a) select (a, b)];

    private static HashSet<int> Asked(ResistorNetwork network, (int, int)[] pairs, List<EdgeChange> changes)
    {
        var (asked, paths) = (new HashSet<int>(), new PortPaths(network));
        foreach (var (port, pair) in pairs.Index())
            paths.Add(port, [pair]);
        paths.Find(changes, port => asked.Add(port));
        return asked;
    }
}
