using FsCheck;
using FsCheck.Fluent;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>Changes of long rows of resistors that few ports pass, as conductors with their joints are, against the network built anew.</summary>
public sealed class FewPortsTests
{
    private const int Nodes = 40;

    private static readonly Gen<double> Conductance = Gen.Choose(-5000, 3000).Select(exponent => Math.Pow(10, exponent / 1000.0));

    // A tree whose branches are long, with a few loops.
    private static readonly Gen<Edge[]> Edges =
        from back in Gen.Choose(1, 4).ArrayOf(Nodes - 1)
        from tree in Conductance.ArrayOf(Nodes - 1)
        from ends in Gen.Choose(0, (Nodes * Nodes) - 1).ArrayOf(3)
        from loops in Conductance.ArrayOf(3)
        select (Edge[])
        [
            .. back.Select((step, node) => new Edge(Math.Max(0, node + 1 - (step < 4 ? 1 : 5)), node + 1, tree[node])),
            .. ends.Zip(loops, (pair, conductance) => new Edge(pair / Nodes, pair % Nodes, conductance)).Where(edge => edge.A != edge.B),
        ];

    private static readonly Arbitrary<Case> Any = Arb.From(
        from edges in Edges
        from ports in Gen.Choose(0, (Nodes * Nodes) - 1).ArrayOf(4)
        from order in Gen.Shuffle(Enumerable.Range(0, edges.Length).ToArray())
        from taken in Gen.Choose(0, 1)
        from set in Gen.Choose(0, 2)
        from joined in Gen.Choose(0, (Nodes * Nodes) - 1)
        from conductance in Conductance
        select new Case(edges, [.. ports.Select(pair => (pair / Nodes, pair % Nodes)).Where(pair => pair.Item1 != pair.Item2)], order[..taken], order[taken..(taken + set)], (joined / Nodes, joined % Nodes), conductance));

    [Fact]
    public void Ports_read_as_those_of_a_network_built_anew() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(1000), Prop.ForAll(Any, item =>
    {
        var network = new ResistorNetwork(Nodes, item.Edges);
        var (anew, changed) = (new ResistorNetwork(Nodes, item.EdgesAfter), new ChangedPorts(new Ports(network, item.Ports)));
        changed.Apply(item.Changes);
        return item.Ports.Index().All(port =>
        {
            var (a, b) = port.Item;
            var ohms = changed.Alters(port.Index, out var altered) ? altered : network.Resistance(a, b);
            return Readings.AreSame(anew.Resistance(a, b), ohms, 1e-9);
        });
    }));

    [Theory]
    [InlineData(1e-7, false)]
    [InlineData(1e-9, true)]
    public void A_change_below_the_share_that_a_port_is_given_leaves_it_unaltered(double share, bool isAltered)
    {
        Edge[] edges = [new(0, 1, 1), new(0, 1, 1)];
        var network = new ResistorNetwork(2, edges);
        var changed = new ChangedPorts(new Ports(network, [(0, 1)], unseenShares: [share]));

        changed.Apply([EdgeChange.Set(0, edges[0], 1 + 2e-8)]);

        Assert.Equal(isAltered, changed.Alters(0, out _));
    }

    [Fact]
    public void Where_some_ports_are_looked_at_these_read_as_else_and_no_other_is_altered() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(500), Prop.ForAll(Any, item =>
    {
        var all = new Ports(new ResistorNetwork(Nodes, item.Edges), item.Ports);
        var unseen = Enumerable.Range(0, item.Ports.Length).Select(all.UnseenOhms).ToArray();
        var (some, every) = (new ChangedPorts(all.Noticing(unseen, port => port % 2 == 0)), new ChangedPorts(all));
        some.Apply(item.Changes);
        every.Apply(item.Changes);
        return Enumerable.Range(0, item.Ports.Length).All(port => port % 2 == 0
            ? Readings.AreSame(Left(every, port), Left(some, port), 1e-8)
            : !all.IsOneIsland(port) || !some.Alters(port, out _));

        double Left(ChangedPorts changed, int port) => changed.Alters(port, out var ohms) ? ohms : all.Ohms(port);
    }));

    [Fact]
    public void A_port_reads_as_the_change_leaves_it_however_little_that_is() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(500), Prop.ForAll(Any, item =>
    {
        var all = new Ports(new ResistorNetwork(Nodes, item.Edges), item.Ports);
        var (anew, changed) = (new ResistorNetwork(Nodes, item.EdgesAfter), new ChangedPorts(all.Noticing([.. item.Ports.Select(_ => 1e9)])));
        changed.Apply(item.Changes);
        return item.Ports.Index().All(port => Readings.AreSame(anew.Resistance(port.Item.Item1, port.Item.Item2), changed.Ohms(port.Index), 1e-9));
    }));

    [Fact]
    public void Bridges_that_the_same_ports_pass_one_after_the_other_have_one_list()
    {
        // 0 - 1 - 2 - 3 - 4 with a branch 2 - 5: a port ends at 5, so that not all that passes 0 - 2 passes 2 - 4.
        Edge[] edges = [new(0, 1, 1), new(1, 2, 1), new(2, 3, 1), new(3, 4, 1), new(2, 5, 1)];
        var network = new ResistorNetwork(6, edges);
        var passages = new PortPassages(network, [(0, 4), (5, 0)]);

        Assert.Equal(passages.RowOf(1), passages.RowOf(2));
        Assert.Equal(passages.RowOf(3), passages.RowOf(4));
        Assert.NotEqual(passages.RowOf(2), passages.RowOf(3));
        Assert.Equal([new Passage(0, 0, 1)], passages.Of(4).ToArray());
        Assert.Equal([new Passage(0, 0, 1), new Passage(1, 1, 0)], passages.Of(1).ToArray());
    }

    private sealed record Case(Edge[] Edges, (int A, int B)[] Ports, int[] Taken, int[] Set, (int A, int B) Joined, double Conductance)
    {
        private bool Joins => Joined.A != Joined.B;

        public List<EdgeChange> Changes =>
        [
            .. Taken.Select(index => EdgeChange.TakeAway(index, Edges[index])),
            .. Set.Select(index => EdgeChange.Set(index, Edges[index], Edges[index].Conductance * 3)),
            .. Joins || Taken.Length + Set.Length == 0 ? [EdgeChange.Add(Joins ? Joined.A : 0, Joins ? Joined.B : 1, Conductance)] : (EdgeChange[])[],
        ];

        public Edge[] EdgesAfter =>
        [
            .. Edges.Index().Where(item => !Taken.Contains(item.Index)).Select(item => Set.Contains(item.Index) ? item.Item with { Conductance = item.Item.Conductance * 3 } : item.Item),
            .. Changes.Where(change => change.Edge < 0).Select(change => new Edge(change.A, change.B, Conductance)),
        ];
    }
}
