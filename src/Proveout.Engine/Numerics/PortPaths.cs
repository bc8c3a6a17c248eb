using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>Which ports a change of a network can alter, found in the graph without arithmetic.</summary>
/// <remarks>
/// The blocks of an island and the nodes that they share form a tree. A current that enters at one end of a change and leaves at another flows only in
/// the blocks on the way between them in this tree, so a port notices only when its own way has a block in common with that. Most blocks are single
/// resistors, and most ways are short.
/// </remarks>
internal sealed class PortPaths
{
    private const int BitsAWord = 64;

    private readonly Bridges _bridges;
    private readonly Islands _islands;
    private readonly Dictionary<int, int[]> _through;

    /// <summary>Lists the ports of each block.</summary>
    /// <param name="network">The network.</param>
    /// <param name="pairs">The nodes of each port.</param>
    public PortPaths(ResistorNetwork network, IReadOnlyList<(int A, int B)> pairs)
    {
        (_bridges, _islands) = (network.Bridges, network.Islands);
        var through = new Dictionary<int, List<int>>();
        for (var port = 0; port < pairs.Count; port++)
            if (_islands.Of(pairs[port].A) == _islands.Of(pairs[port].B))
                foreach (var block in Way(pairs[port].A, pairs[port].B))
                {
                    ref var ports = ref CollectionsMarshal.GetValueRefOrAddDefault(through, block, out _);
                    (ports ??= []).Add(port);
                }

        _through = through.ToDictionary(item => item.Key, item => item.Value.ToArray());
    }

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

    /// <summary>Sets the bits of the ports within one island that a changed network may alter: those through a bridge that is cut or altered, or on the way of an update.</summary>
    public void Add(ChangedPieces pieces, SectionFlows flows, Span<ulong> mask)
    {
        foreach (var run in pieces.Sections)
            AddBlock(_bridges.BlockOf(_bridges.NodeAt(run.Start)), mask);
        for (var update = 0; update < pieces.Updates.Length; update++)
            for (var section = 0; section < pieces.Sections.Count; section++)
                if (flows.EndsIn(update, section) is var (entry, exit) && entry != exit)
                    foreach (var block in Way(entry, exit))
                        AddBlock(block, mask);
    }

    // The ways from one node of an island to each of the others cover the ways between any two of them.
    private bool Reach(int node, Span<int> firstOf, ref int islands, Span<ulong> mask)
    {
        var first = 0;
        while (first < islands && _islands.Of(firstOf[first]) != _islands.Of(node))
            first++;
        if (first == islands)
            firstOf[islands++] = node;
        var isAny = false;
        foreach (var block in Way(firstOf[first], node))
            isAny |= AddBlock(block, mask);
        return isAny;
    }

    private bool AddBlock(int block, Span<ulong> mask)
    {
        if (!_through.TryGetValue(block, out var ports))
            return false;
        foreach (var port in ports)
            mask[port / BitsAWord] |= 1UL << (port % BitsAWord);
        return true;
    }

    private BlockWay Way(int one, int other) => new(_bridges, one, other);
}
