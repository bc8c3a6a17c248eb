using System.Runtime.InteropServices;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The ports whose leads are on two islands, by the search order of <see cref="Bridges"/>.</summary>
internal sealed class OpenPorts
{
    private readonly Islands _islands;
    private readonly Bridges _bridges;
    private readonly OpenEnd[] _ends;
    private readonly int[] _firstAt;

    /// <summary>Sorts them.</summary>
    /// <param name="ports">All ports.</param>
    public OpenPorts(Ports ports)
    {
        (_islands, _bridges) = (ports.Network.Islands, ports.Network.Bridges);
        int[] open = [.. Enumerable.Range(0, ports.Pairs.Length).Where(port => !ports.IsOneIsland(port))];
        _firstAt = _bridges.FirstAt(open.SelectMany(port => new[] { PlaceOf(ports.Pairs[port].A), PlaceOf(ports.Pairs[port].B) }));
        _ends = new OpenEnd[2 * open.Length];
        int[] next = [.. _firstAt];
        foreach (var port in open)
        {
            var ((a, b), (ofA, ofB)) = (ports.Pairs[port], ports.IslandsOf(port));
            _ends[next[PlaceOf(a)]++] = new OpenEnd(PlaceOf(a), port, ofB);
            _ends[next[PlaceOf(b)]++] = new OpenEnd(PlaceOf(b), port, ofA);
        }

        int PlaceOf(int place) => _bridges.NumberOf(ports.Nodes[place]);
    }

    /// <summary>Sets the bits of those that a change may join.</summary>
    public void AddJoined(ChangedPieces changed, Span<ulong> mask)
    {
        for (var run = 0; run < changed.Runs.Count; run++)
            // A port that a change closes ends on two islands: it is enough to ask those of the smaller.
            if (LargestIn(changed.Runs, changed.Runs[run].Piece) != IslandOf(changed.Runs[run]))
                AddJoined(changed.Runs, run, mask);
    }

    private void AddJoined(List<PieceRun> runs, int run, Span<ulong> mask)
    {
        var (start, end, piece) = runs[run];
        foreach (ref readonly var open in _ends.AsSpan(_firstAt[start].._firstAt[end]))
            if (HoldsIsland(runs, piece, open.OtherIsland) && PieceRun.Holding(runs, open.Place) == run)
                mask[open.Port / 64] |= 1UL << (open.Port % 64);
    }

    private int LargestIn(List<PieceRun> runs, int piece)
    {
        var (largest, size) = (-1, 0);
        foreach (var run in CollectionsMarshal.AsSpan(runs))
            if (run.Piece == piece && IslandOf(run) is var island && _islands.Members(island).Length > size)
                (largest, size) = (island, _islands.Members(island).Length);
        return largest;
    }

    private bool HoldsIsland(List<PieceRun> runs, int piece, int island)
    {
        foreach (var run in CollectionsMarshal.AsSpan(runs))
            if (run.Piece == piece && IslandOf(run) == island)
                return true;
        return false;
    }

    private int IslandOf(PieceRun run) => _islands.Of(_bridges.NodeAt(run.Start));

    // One end of a port: where it is, and the island of the other.
    private readonly record struct OpenEnd(int Place, int Port, int OtherIsland);
}
