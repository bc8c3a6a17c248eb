namespace Proveout.Engine.Numerics;

/// <summary>The blocks on the way of each port, listed by block.</summary>
/// <remarks>
/// The blocks of an island and the nodes that they share form a tree. A current that enters at one end of a change and leaves at another flows only in
/// the blocks on the way between them in this tree, so a port notices only when its own way has a block in common with that. Most blocks are single
/// resistors, and most ways are short.
/// </remarks>
internal sealed class PortPassages
{
    private readonly Dictionary<int, (int Start, int Count)> _of = [];
    private readonly Passage[] _passages;

    /// <summary>Lists the ports of each block.</summary>
    /// <param name="network">The network.</param>
    /// <param name="pairs">The nodes of each port.</param>
    public PortPassages(ResistorNetwork network, IReadOnlyList<(int A, int B)> pairs)
    {
        var found = new List<(int Block, Passage Passage)>();
        for (var port = 0; port < pairs.Count; port++)
            if (network.Islands.Of(pairs[port].A) == network.Islands.Of(pairs[port].B))
                AddWay(network.Bridges, pairs[port].A, pairs[port].B, port, found);
        foreach (var (block, _) in found)
            _of[block] = (0, _of.GetValueOrDefault(block).Count + 1);
        var start = 0;
        foreach (var (block, (_, count)) in _of.ToArray())
        {
            _of[block] = (start, 0);
            start += count;
        }

        _passages = new Passage[start];
        foreach (var (block, passage) in found)
        {
            var (first, count) = _of[block];
            _passages[first + count] = passage;
            _of[block] = (first, count + 1);
        }
    }

    /// <summary>The ports whose way passes a block.</summary>
    public ReadOnlySpan<Passage> Of(int block) => _of.TryGetValue(block, out var found) ? _passages.AsSpan(found.Start, found.Count) : [];

    private static void AddWay(Bridges bridges, int a, int b, int port, List<(int Block, Passage Passage)> found)
    {
        var way = new BlockWay(bridges, a, b);
        while (way.MoveNext())
            found.Add((way.Current, new Passage(port, bridges.PlaceIn(way.Current, way.First), bridges.PlaceIn(way.Current, way.Last))));
    }
}
