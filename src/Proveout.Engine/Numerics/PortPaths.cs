namespace Proveout.Engine.Numerics;

/// <summary>Which ports a change of a network can alter, found in the graph without arithmetic.</summary>
/// <param name="network">The network.</param>
/// <param name="pairs">The nodes of each port.</param>
internal sealed class PortPaths(ResistorNetwork network, IReadOnlyList<(int A, int B)> pairs)
{
    private const int BitsAWord = 64;

    private readonly PortPassages _passages = new(network, pairs);

    /// <summary>Sets the bits of the ports within one island that changes can alter; true when there is one.</summary>
    public bool Add(List<EdgeChange> changes, Span<ulong> mask)
    {
        Span<int> firstOf = stackalloc int[2 * changes.Count];
        var islands = 0;
        var isAny = false;
        foreach (var change in changes)
        {
            isAny |= Reach(change.A, firstOf, ref islands, mask);
            isAny |= Reach(change.B, firstOf, ref islands, mask);
        }

        return isAny;
    }

    // The ways from one node of an island to each of the others cover the ways between any two of them.
    private bool Reach(int node, Span<int> firstOf, ref int islands, Span<ulong> mask)
    {
        var first = 0;
        while (first < islands && network.Islands.Of(firstOf[first]) != network.Islands.Of(node))
            first++;
        if (first == islands)
            firstOf[islands++] = node;
        var isAny = false;
        foreach (var block in new BlockWay(network.Bridges, firstOf[first], node))
            isAny |= AddBlock(block, mask);
        return isAny;
    }

    private bool AddBlock(int block, Span<ulong> mask)
    {
        var passages = _passages.Of(block);
        foreach (var passage in passages)
            mask[passage.Port / BitsAWord] |= 1UL << (passage.Port % BitsAWord);
        return passages.Length > 0;
    }
}
