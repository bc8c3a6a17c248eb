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
    /// <param name="isListed">Which ports are listed; all when null.</param>
    public PortPassages(ResistorNetwork network, IReadOnlyList<(int A, int B)> pairs, Func<int, bool>? isListed = null)
    {
        isListed ??= _ => true;
        // By block, as the network names them; room for that is needed for a moment only.
        using var room = new RentedNumbers(network.NodeCount);
        var counts = room.Next();
        Walk(network, pairs, isListed, (block, _, _, _) => counts[block]++);
        int[] blocks = [.. network.Bridges.InOrder.ToArray().Where(block => counts[block] > 0)];
        var firstOf = FirstInRow(network.Bridges, pairs, blocks, room);
        var startOf = room.Next();
        var start = 0;
        foreach (var block in blocks.Where(block => firstOf[block] == block))
            (startOf[block], start) = (start, start + counts[block]);
        _passages = new Passage[start];
        Walk(network, pairs, isListed, (block, port, first, last) =>
        {
            if (firstOf[block] == block)
                _passages[startOf[block]++] = new Passage(port, network.Bridges.PlaceIn(block, first), network.Bridges.PlaceIn(block, last));
        });
        foreach (var block in blocks)
            _of.Add(block, (startOf[firstOf[block]] - counts[firstOf[block]], counts[firstOf[block]]));
    }

    /// <summary>The ports whose way passes a block. Bridges that the same ports pass one after the other have the same list.</summary>
    public ReadOnlySpan<Passage> Of(int block) => Of(RowOf(block));

    /// <summary>Where the list of a block lies, by which it is known; empty when no port passes it.</summary>
    public (int Start, int Count) RowOf(int block) => _of.GetValueOrDefault(block);

    /// <summary>The ports of such a list.</summary>
    public ReadOnlySpan<Passage> Of((int Start, int Count) row) => _passages.AsSpan(row.Start, row.Count);

    // For each block itself; of bridges in a row, with no port that ends between them and none that comes to it from elsewhere, the uppermost.
    private static int[] FirstInRow(Bridges bridges, IReadOnlyList<(int A, int B)> pairs, int[] blocks, RentedNumbers room)
    {
        var (ends, below, firstOf) = (room.Next(), room.Next(), room.Next());
        foreach (var (a, b) in pairs)
            ends[a] = ends[b] = 1;
        foreach (var block in blocks)
            below[bridges.TopOf(block)]++;
        firstOf.AsSpan().Fill(-1);
        foreach (var block in blocks)
        {
            var above = bridges.TopOf(block);
            var isInRow = bridges.SizeOf(block) == 1 && firstOf[above] >= 0 && bridges.SizeOf(above) == 1 && below[above] == 1 && ends[above] == 0;
            firstOf[block] = isInRow ? firstOf[above] : block;
        }

        return firstOf;
    }

    // Gone through twice, for all of them at once are many.
    private static void Walk(ResistorNetwork network, IReadOnlyList<(int A, int B)> pairs, Func<int, bool> isListed, Action<int, int, int, int> onBlock)
    {
        for (var port = 0; port < pairs.Count; port++)
        {
            var (a, b) = pairs[port];
            if (network.Islands.Of(a) != network.Islands.Of(b) || !isListed(port))
                continue;
            var way = new BlockWay(network.Bridges, a, b);
            while (way.MoveNext())
                onBlock(way.Current, port, way.First, way.Last);
        }
    }
}
