using System.Runtime.InteropServices;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>The ends of junctions and insulation along the search order of a network, where an island and what a bridge cuts off are runs; summed up so that a run is told in a few steps.</summary>
internal sealed class StrayEnds
{
    private readonly StrayEnd[] _ends;
    private readonly int[] _firstAt;
    private readonly int[] _insulationBefore;
    private readonly DoubleDouble[] _siemensBefore;
    private readonly double[] _volts;
    private readonly int[] _junctionsBefore;
    private readonly int[][] _islandsOfRoot;
    private readonly Dictionary<(int, int), StrayTotal> _between = [];

    /// <summary>Sorts and sums them.</summary>
    /// <param name="paths">Junctions and insulation.</param>
    /// <param name="network">The network.</param>
    /// <param name="pieces">What touches each island.</param>
    public StrayEnds(StrayPaths paths, ResistorNetwork network, StrayPieces pieces)
    {
        (Network, Pieces) = (network, pieces);
        var place = network.Bridges.NumberOf;
        _ends =
        [
            .. paths.Insulation.SelectMany(item => new StrayEnd[] { new(place(item.A), place(item.B), item.Siemens, 0, true), new(place(item.B), place(item.A), item.Siemens, 0, false) })
                .Concat(paths.Junctions.SelectMany(item => new StrayEnd[]
                {
                    new(place(item.Anode), place(item.Cathode), 0, item.ForwardVolts, true), new(place(item.Cathode), place(item.Anode), 0, item.ForwardVolts, false),
                }))
                .OrderBy(end => end.Place),
        ];
        _firstAt = new int[network.NodeCount + 1];
        foreach (var end in _ends)
            _firstAt[end.Place + 1]++;
        for (var at = 0; at < network.NodeCount; at++)
            _firstAt[at + 1] += _firstAt[at];
        _volts = [.. paths.Junctions.Select(item => item.ForwardVolts).Distinct().Order()];
        (_insulationBefore, _siemensBefore, _junctionsBefore) = (new int[_ends.Length + 1], new DoubleDouble[_ends.Length + 1], new int[(_ends.Length + 1) * _volts.Length]);
        for (var index = 0; index < _ends.Length; index++)
            Count(index);
        _islandsOfRoot = Array.ConvertAll(new int[network.Islands.Count][], _ => Array.Empty<int>());
        foreach (var group in Enumerable.Range(0, network.Islands.Count).Where(island => EndsOf(island).Length > 0).GroupBy(pieces.RootOf))
            _islandsOfRoot[group.Key] = [.. group];
    }

    /// <summary>The network.</summary>
    public ResistorNetwork Network { get; }

    /// <summary>What touches each island.</summary>
    public StrayPieces Pieces { get; }

    /// <summary>Forward voltages that junctions have, rising.</summary>
    public ReadOnlySpan<double> Volts => _volts;

    /// <summary>The island at a place in the search order.</summary>
    public int IslandAt(int place) => Network.Islands.Of(Network.Bridges.NodeAt(place));

    /// <summary>The ends on an island, rising by place; what ends there twice comes twice.</summary>
    public ReadOnlySpan<StrayEnd> EndsOf(int island) => Network.AnchorOf(island) is var anchor ? EndsIn(Network.Bridges.NumberOf(anchor), Network.Bridges.EndOf(anchor)) : [];

    /// <summary>The ends from a place to before another.</summary>
    public ReadOnlySpan<StrayEnd> EndsIn(int start, int end) => _ends.AsSpan(_firstAt[start].._firstAt[end]);

    /// <summary>The islands that junctions and insulation join to that which stands for them.</summary>
    public int[] IslandsOf(int root) => _islandsOfRoot[root];

    /// <summary>The insulation that ends from a place to before another; what ends there twice is counted twice.</summary>
    public StrayTotal InsulationIn(int start, int end) => new(
        _insulationBefore[_firstAt[end]] - _insulationBefore[_firstAt[start]], _siemensBefore[_firstAt[end]] - _siemensBefore[_firstAt[start]]);

    /// <summary>How many junctions of each of <see cref="Volts"/> end from a place to before another; added to numbers times a factor.</summary>
    public void AddJunctions(int start, int end, int factor, Span<int> numbers)
    {
        for (var kind = 0; kind < _volts.Length; kind++)
            numbers[kind] += factor * (_junctionsBefore[(_firstAt[end] * _volts.Length) + kind] - _junctionsBefore[(_firstAt[start] * _volts.Length) + kind]);
    }

    /// <summary>The insulation from one island to another, or from an island to itself.</summary>
    public StrayTotal Between(int one, int other) => _between.GetValueOrDefault((Math.Min(one, other), Math.Max(one, other)));

    private void Count(int index)
    {
        var end = _ends[index];
        _insulationBefore[index + 1] = _insulationBefore[index] + (end.IsInsulation ? 1 : 0);
        _siemensBefore[index + 1] = _siemensBefore[index] + end.Siemens;
        for (var kind = 0; kind < _volts.Length; kind++)
            _junctionsBefore[((index + 1) * _volts.Length) + kind] = _junctionsBefore[(index * _volts.Length) + kind] + (end.ForwardVolts == _volts[kind] ? 1 : 0);
        if (!end.IsInsulation || !end.IsFirst)
            return;
        var (one, other) = (IslandAt(end.Place), IslandAt(end.Other));
        ref var total = ref CollectionsMarshal.GetValueRefOrAddDefault(_between, (Math.Min(one, other), Math.Max(one, other)), out _);
        total += new StrayTotal(1, end.Siemens);
    }
}
