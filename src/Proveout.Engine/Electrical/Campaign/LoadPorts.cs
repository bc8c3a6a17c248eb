using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The ports beside which junctions and insulation count, one ohm or more and open ones, by the search order of <see cref="Bridges"/>.</summary>
internal sealed class LoadPorts
{
    private readonly Islands _islands;
    private readonly Bridges _bridges;
    private readonly (int Number, int Port)[] _ends;
    private readonly int[] _firstAt;

    /// <summary>Sorts them.</summary>
    public LoadPorts(Ports ports)
    {
        (_islands, _bridges) = (ports.Network.Islands, ports.Network.Bridges);
        _ends =
        [
            .. Enumerable.Range(0, ports.Pairs.Length)
                .Where(port => ports.Ohms(port) >= StrayPieces.NegligibleOhms)
                .SelectMany(port => new[] { (_bridges.NumberOf(ports.Nodes[ports.Pairs[port].A]), port), (_bridges.NumberOf(ports.Nodes[ports.Pairs[port].B]), port) })
                .Order(),
        ];
        _firstAt = new int[ports.Network.NodeCount + 1];
        foreach (var (number, _) in _ends)
            _firstAt[number + 1]++;
        for (var number = 0; number < ports.Network.NodeCount; number++)
            _firstAt[number + 1] += _firstAt[number];
    }

    /// <summary>Sets the bits of those beside which a change leaves other junctions and insulation, and of those that it may join.</summary>
    public void Add(ChangedPieces changed, ChangedStrays strays, Span<ulong> mask)
    {
        for (var run = 0; run < changed.Runs.Count; run++)
            if (IsAsked(changed, strays, run))
                Add(changed.Runs, run, mask);
    }

    /// <summary>Sets the bits of those that end on some islands.</summary>
    public void Add(List<int> islands, Span<ulong> mask)
    {
        foreach (var island in islands)
            foreach (var (_, port) in _ends.AsSpan(_firstAt[_bridges.NumberOf(_islands.Members(island)[0])].._firstAt[_bridges.EndOf(_islands.Members(island)[0])]))
                mask[port / 64] |= 1UL << (port % 64);
    }

    // A port that a change closes ends on two islands: it is enough to ask those of the smaller.
    private bool IsAsked(ChangedPieces changed, ChangedStrays strays, int run) =>
        IslandOf(changed.Runs[run]) is var island && (!strays.Keeps(island, changed.Runs[run].Piece) || LargestIn(changed, changed.Runs[run].Piece) != island);

    private int LargestIn(ChangedPieces changed, int piece)
    {
        var (largest, size) = (-1, 0);
        foreach (var run in changed.Runs)
            if (run.Piece == piece && IslandOf(run) is var island && _islands.Members(island).Length > size)
                (largest, size) = (island, _islands.Members(island).Length);
        return largest;
    }

    private int IslandOf(PieceRun run) => _islands.Of(_bridges.NodeAt(run.Start));

    private void Add(List<PieceRun> runs, int run, Span<ulong> mask)
    {
        foreach (var (number, port) in _ends.AsSpan(_firstAt[runs[run].Start].._firstAt[runs[run].End]))
            if (PieceRun.Holding(runs, number) == run)
                mask[port / 64] |= 1UL << (port % 64);
    }
}
