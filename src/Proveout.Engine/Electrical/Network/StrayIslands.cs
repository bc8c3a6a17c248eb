using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Junctions and insulation by the islands of a network that they end on, so that a change of a few islands asks for theirs alone.</summary>
internal sealed class StrayIslands
{
    private readonly int[][] _insulationAt;
    private readonly int[][] _junctionsAt;
    private readonly ILookup<int, int> _islandsOfRoot;

    /// <summary>Sorts them.</summary>
    /// <param name="paths">Junctions and insulation.</param>
    /// <param name="islands">The islands.</param>
    /// <param name="pieces">What touches each island.</param>
    public StrayIslands(StrayPaths paths, Islands islands, StrayPieces pieces)
    {
        (Paths, Islands, Pieces) = (paths, islands, pieces);
        _insulationAt = At(paths.Insulation.Select(item => (item.A, item.B)));
        _junctionsAt = At(paths.Junctions.Select(item => (item.Anode, item.Cathode)));
        _islandsOfRoot = Enumerable.Range(0, islands.Count).Where(HasStrays).ToLookup(pieces.RootOf);
    }

    /// <summary>Junctions and insulation.</summary>
    public StrayPaths Paths { get; }

    /// <summary>The islands.</summary>
    public Islands Islands { get; }

    /// <summary>What touches each island.</summary>
    public StrayPieces Pieces { get; }

    /// <summary>Numbers in <see cref="StrayPaths.Insulation"/> of those that end on an island, rising.</summary>
    public int[] InsulationAt(int island) => _insulationAt[island];

    /// <summary>Numbers in <see cref="StrayPaths.Junctions"/> of those that end on an island, rising.</summary>
    public int[] JunctionsAt(int island) => _junctionsAt[island];

    /// <summary>True when a junction or an insulation ends on an island.</summary>
    public bool HasStrays(int island) => _insulationAt[island].Length > 0 || _junctionsAt[island].Length > 0;

    /// <summary>The islands that junctions and insulation join to that which stands for them.</summary>
    public IEnumerable<int> IslandsOf(int root) => _islandsOfRoot[root];

    private int[][] At(IEnumerable<(int One, int Other)> ends)
    {
        var at = new List<int>?[Islands.Count];
        foreach (var (index, (one, other)) in ends.Index())
        {
            (at[Islands.Of(one)] ??= []).Add(index);
            if (Islands.Of(one) != Islands.Of(other))
                (at[Islands.Of(other)] ??= []).Add(index);
        }

        return Array.ConvertAll(at, list => list?.ToArray() ?? []);
    }
}
