namespace Proveout.Engine.Electrical;

/// <summary>Pieces of a network that junctions tie together, whichever way they point.</summary>
/// <param name="pieceOf">The piece that a node is in.</param>
/// <param name="rootOf">For each piece, the piece that stands for its group.</param>
internal sealed class JunctionGroups(Func<int, int> pieceOf, int[] rootOf)
{
    /// <summary>True when current might run between the two nodes.</summary>
    public bool AreTogether(int a, int b) => rootOf[pieceOf(a)] == rootOf[pieceOf(b)];

    /// <summary>Stands for the group that a node is in.</summary>
    public int Of(int node) => rootOf[pieceOf(node)];
}
