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
        if (!changed.AreRuns)
        {
            foreach (var island in changed.TouchedIslands)
                for (var piece = 1; piece <= changed.Count; piece++)
                    if (IsAsked(changed, strays, island, piece))
                        Add(changed, _bridges.NumberOf(_islands.Members(island)[0]), _bridges.EndOf(_islands.Members(island)[0]), piece, mask);
            return;
        }

        foreach (var (start, end, piece) in changed.Runs)
            if (IsAsked(changed, strays, _islands.Of(_bridges.NodeAt(start)), piece))
                Add(changed, start, end, piece, mask);
    }

    // A port that a change closes ends on two islands: it is enough to ask those of the smaller.
    private bool IsAsked(ChangedPieces changed, ChangedStrays strays, int island, int piece) =>
        !strays.Keeps(island, piece) || LargestIn(changed, piece) != island;

    private int LargestIn(ChangedPieces changed, int piece)
    {
        var (largest, size) = (-1, 0);
        foreach (var island in changed.TouchedIslands)
            if (_islands.Members(island).Length > size && HoldsAnyOf(changed, piece, island))
                (largest, size) = (island, _islands.Members(island).Length);
        return largest;
    }

    private bool HoldsAnyOf(ChangedPieces changed, int piece, int island)
    {
        if (!changed.AreRuns)
            return Array.Exists(_islands.Members(island), node => changed.Of(node) == piece);
        foreach (var run in changed.Runs)
            if (run.Piece == piece && _islands.Of(_bridges.NodeAt(run.Start)) == island)
                return true;
        return false;
    }

    private void Add(ChangedPieces changed, int start, int end, int piece, Span<ulong> mask)
    {
        for (var number = start; number < end; number++)
            if (_firstAt[number] < _firstAt[number + 1] && changed.Of(_bridges.NodeAt(number)) == piece)
                for (var index = _firstAt[number]; index < _firstAt[number + 1]; index++)
                    mask[_ends[index].Port / 64] |= 1UL << (_ends[index].Port % 64);
    }
}
