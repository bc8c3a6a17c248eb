using System.Runtime.InteropServices;

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
        foreach (var (block, _) in Passages(network, pairs))
            CollectionsMarshal.GetValueRefOrAddDefault(_of, block, out _).Count++;
        var firstOf = FirstInRow(network.Bridges, pairs);
        var start = 0;
        foreach (var block in firstOf.Keys.Where(block => firstOf[block] == block))
        {
            ref var found = ref CollectionsMarshal.GetValueRefOrNullRef(_of, block);
            (start, found) = (start + found.Count, (start, 0));
        }

        _passages = new Passage[start];
        foreach (var (block, passage) in Passages(network, pairs))
            if (firstOf[block] == block)
            {
                ref var found = ref CollectionsMarshal.GetValueRefOrNullRef(_of, block);
                _passages[found.Start + found.Count++] = passage;
            }

        foreach (var (block, first) in firstOf)
            _of[block] = _of[first];
    }

    /// <summary>The ports whose way passes a block. Bridges that the same ports pass one after the other have the same list.</summary>
    public ReadOnlySpan<Passage> Of(int block) => Of(RowOf(block));

    /// <summary>Where the list of a block lies, by which it is known; empty when no port passes it.</summary>
    public (int Start, int Count) RowOf(int block) => _of.GetValueOrDefault(block);

    /// <summary>The ports of such a list.</summary>
    public ReadOnlySpan<Passage> Of((int Start, int Count) row) => _passages.AsSpan(row.Start, row.Count);

    // Of bridges in a row, with no port that ends between them and none that comes to it from elsewhere, the uppermost stands for all.
    private Dictionary<int, int> FirstInRow(Bridges bridges, IReadOnlyList<(int A, int B)> pairs)
    {
        var ends = pairs.SelectMany(pair => new[] { pair.A, pair.B }).ToHashSet();
        var below = _of.Keys.CountBy(bridges.TopOf).ToDictionary();
        var firstOf = new Dictionary<int, int>(_of.Count);
        foreach (var block in _of.Keys.OrderBy(bridges.NumberOf))
        {
            var above = bridges.TopOf(block);
            var isInRow = bridges.SizeOf(block) == 1 && firstOf.ContainsKey(above) && bridges.SizeOf(above) == 1 && below[above] == 1 && !ends.Contains(above);
            firstOf[block] = isInRow ? firstOf[above] : block;
        }

        return firstOf;
    }

    // Gone through twice, for all of them at once are many.
    private static IEnumerable<(int Block, Passage Passage)> Passages(ResistorNetwork network, IReadOnlyList<(int A, int B)> pairs)
    {
        var bridges = network.Bridges;
        for (var port = 0; port < pairs.Count; port++)
        {
            var (a, b) = pairs[port];
            if (network.Islands.Of(a) != network.Islands.Of(b))
                continue;
            var way = new BlockWay(bridges, a, b);
            while (way.MoveNext())
                yield return (way.Current, new Passage(port, bridges.PlaceIn(way.Current, way.First), bridges.PlaceIn(way.Current, way.Last)));
        }
    }
}
