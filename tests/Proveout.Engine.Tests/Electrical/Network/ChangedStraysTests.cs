using Proveout.Engine.Electrical;
using Proveout.Engine.Numerics;
using Proveout.Engine.Tests.Samples;

namespace Proveout.Engine.Tests.Electrical.Network;

/// <summary>What of junctions and insulation touches the pieces that a fault leaves, against the same summed up over the network built anew.</summary>
public sealed class ChangedStraysTests
{
    private const double Ohms = 1e5;
    private const double Amperes = 1e-3;

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Every_fault_of_the_small_sample_leaves_the_strays_of_a_network_built_anew(bool plugsApart)
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design("pennywort"));
        var state = new StateNetwork(wiring, new MachineState(plugsApart, []));
        var changes = new FaultChanges(state, atHigh: false);
        var (found, moved, regrouped) = (new ChangedStrays(state.StrayEnds), 0, 0);
        var nodes = StrayNodes(state);
        foreach (var fault in WiringFaultRules.Generate(new WiringContext(wiring)))
        {
            List<EdgeChange> edges = [];
            changes.Add(fault, edges);
            var pieces = new ChangedPieces(state.Low.Network);
            if (edges.Count == 0)
                continue;
            pieces.Find(edges);
            if (pieces.AreAsBefore)
                continue;
            moved++;
            var strays = found.Of(pieces);
            regrouped += found.IsRegrouped ? 1 : 0;
            AssertSame(state, edges, nodes, strays, node => pieces.Of(node) is > 0 and var piece ? state.Low.Network.Islands.Count + piece - 1 : state.Low.Network.Islands.Of(node));
        }

        Assert.True(moved > 50 && regrouped > 5, $"{moved} faults moved pieces, {regrouped} moved junctions or insulation: the trial says little.");
    }

    [Fact]
    public void Several_faults_at_once_leave_the_strays_of_a_network_built_anew()
    {
        var wiring = WiringNetworkBuilder.Build(Repository.Design("pennywort"));
        var state = new StateNetwork(wiring, new MachineState(false, []));
        var (pieces, found, random) = (new ChangedPieces(state.Low.Network), new ChangedStrays(state.StrayEnds), new Random(20261129));
        var nodes = StrayNodes(state);
        var parted = 0;
        for (var round = 0; round < 150; round++)
        {
            // Conductors, joints and resistors go wherever they are, and wires lie where none should.
            var taken = Enumerable.Range(0, state.Low.Network.EdgeCount).OrderBy(_ => random.Next()).Take(random.Next(1, 60)).ToArray();
            List<EdgeChange> edges =
            [
                .. taken.Select(edge => EdgeChange.TakeAway(edge, state.Low.Network.EdgeOf(edge))),
                .. Enumerable.Range(0, random.Next(6)).Select(_ => EdgeChange.Add(nodes[random.Next(nodes.Length)], random.Next(state.Low.Network.NodeCount), 1)).Where(change => change.A != change.B),
            ];
            pieces.Find(edges);
            parted += pieces.AreSections ? 0 : 1;
            AssertSame(state, edges, nodes, found.Of(pieces), node => pieces.Of(node) is > 0 and var piece ? state.Low.Network.Islands.Count + piece - 1 : state.Low.Network.Islands.Of(node));
        }

        Assert.True(parted > 20, $"{parted} of 150 changes took resistors out of loops that part them: the trial says little.");
    }

    [Fact]
    public void A_piece_keeps_its_strays_by_what_they_are_and_not_by_what_they_amount_to()
    {
        // Two parts alike, each with insulation to a sheath of its own; of the one a wire comes off and is put on the sheath of the other.
        var wiring = WiringNetworkBuilder.Build(SmallMachine.Read(
            parts: "A1: {type: heater, name: One}\nA2: {type: heater, name: Other}",
            types: """
                heater:
                  name: Heater
                  letter: A
                  terminals: {T1: {role: passive}, T2: {role: passive}, T3: {role: passive}}
                  circuit:
                    coil: {kind: resistor, between: [T1, T2], value: 10 ohm +-1 %}
                    sheath: {kind: insulation, between: [T1, T3], at-least: 1 Mohm}
                """));
        var state = new StateNetwork(wiring, new MachineState(false, []));
        var (one, other, sheath) = (wiring.PartNode("A1", "T1"), wiring.PartNode("A1", "T2"), wiring.PartNode("A2", "T3"));
        var edge = state.Low.EdgeOf(wiring.Elements.Single(element => element.Subject == "A1" && element.Name == "coil").Index);
        var pieces = new ChangedPieces(state.Low.Network);
        pieces.Find([EdgeChange.TakeAway(edge, state.Low.Network.EdgeOf(edge)), EdgeChange.Add(other, sheath, 1)]);
        var strays = new ChangedStrays(state.StrayEnds);
        _ = strays.Of(pieces);

        Assert.True(strays.Keeps(state.Low.Network.Islands.Of(one), pieces.Of(one)));
        Assert.False(strays.Keeps(state.Low.Network.Islands.Of(other), pieces.Of(other)));
    }

    private static int[] StrayNodes(StateNetwork state) =>
        [.. state.StrayPaths.Junctions.SelectMany(item => new[] { item.Anode, item.Cathode }).Concat(state.StrayPaths.Insulation.SelectMany(item => new[] { item.A, item.B })).Distinct()];

    private static void AssertSame(StateNetwork state, List<EdgeChange> changes, int[] nodes, StrayPieces strays, Func<int, int> pieceOf)
    {
        var network = state.Low.Network;
        var taken = changes.Where(change => change.TakesAway).Select(change => change.Edge).ToHashSet();
        var rebuilt = new ResistorNetwork(
            network.NodeCount,
            [
                .. Enumerable.Range(0, network.EdgeCount).Where(edge => !taken.Contains(edge)).Select(network.EdgeOf),
                .. changes.Where(change => change.Edge < 0).Select(change => new Edge(change.A, change.B, 1)),
            ]);
        var islands = rebuilt.Islands;
        StrayPieces? anew = null;
        anew = state.StrayPaths.Of(islands, (red, black) => new JunctionWays(new StrayEnds(state.StrayPaths, rebuilt, anew!)).LeastVolts(null, red, black));
        foreach (var a in nodes.Where((_, index) => index % 3 == 0))
            foreach (var b in nodes)
            {
                Assert.Equal(anew.AreJoined(islands.Of(a), islands.Of(b)), strays.AreJoined(pieceOf(a), pieceOf(b)));
                Assert.Equal(anew.LowerLimit(Ohms, islands.Of(a), islands.Of(b)), strays.LowerLimit(Ohms, pieceOf(a), pieceOf(b)));
                if (a % 5 == 0)
                    Assert.Equal(anew.LeastVolts(Ohms, islands.Of(a), islands.Of(b), Amperes), strays.LeastVolts(Ohms, pieceOf(a), pieceOf(b), Amperes));
            }
    }
}
