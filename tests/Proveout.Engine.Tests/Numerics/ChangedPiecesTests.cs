using Proveout.Engine.Numerics;

namespace Proveout.Engine.Tests.Numerics;

/// <summary>The pieces that a change leaves, without walking them, against the islands of a network built anew.</summary>
public sealed class ChangedPiecesTests
{
    [Theory]
    [InlineData(20, 24, 6)]
    [InlineData(20, 40, 20)]
    [InlineData(60, 75, 30)]
    [InlineData(60, 160, 90)]
    public void However_many_resistors_go_the_pieces_are_the_islands_of_a_network_built_anew(int nodes, int resistors, int taken)
    {
        var random = new Random(20261129);
        var parted = 0;
        for (var round = 0; round < 200; round++)
        {
            var edges = Enumerable.Range(0, resistors).Select(_ => RandomEdge(random, nodes)).ToArray();
            var network = new ResistorNetwork(nodes, edges);
            var gone = Enumerable.Range(0, resistors).OrderBy(_ => random.Next()).Take(taken).ToHashSet();
            var added = Enumerable.Range(0, random.Next(4)).Select(_ => RandomEdge(random, nodes)).ToArray();
            var pieces = new ChangedPieces(network);
            pieces.Find([.. gone.Select(edge => EdgeChange.TakeAway(edge, edges[edge])), .. added.Select(edge => EdgeChange.Add(edge.A, edge.B, edge.Conductance))]);
            parted += pieces.AreSections ? 0 : 1;

            var anew = new Islands(nodes, [.. edges.Where((_, index) => !gone.Contains(index)).Concat(added).Select(edge => (edge.A, edge.B))]);
            for (var a = 0; a < nodes; a++)
                for (var b = 0; b < nodes; b++)
                    Assert.Equal(anew.Of(a) == anew.Of(b), PieceOf(a) == PieceOf(b));
            Assert.Equal(Enumerable.Range(1, pieces.Count), Enumerable.Range(1, pieces.Count).Select(piece => pieces.Of(pieces.FirstOf(piece))));

            // An island that the change leaves alone stands for itself.
            int PieceOf(int node) => pieces.Of(node) is > 0 and var piece ? piece : -1 - network.Islands.Of(node);
        }

        Assert.True(parted > 50, $"{parted} of 200 changes took resistors out of loops that part them: the trial says little.");
    }

    private static Edge RandomEdge(Random random, int nodes)
    {
        var a = random.Next(nodes);
        return new Edge(a, (a + 1 + random.Next(nodes - 1)) % nodes, 1);
    }
}
