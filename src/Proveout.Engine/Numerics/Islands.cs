using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>Which nodes of a graph hang together.</summary>
internal sealed class Islands
{
    private readonly int[] _of;
    private readonly int[][] _members;

    /// <summary>Finds the islands of a graph.</summary>
    public Islands(int nodeCount, IEnumerable<(int A, int B)> edges)
    {
        var joined = new DisjointSets();
        joined.Reset(nodeCount);
        foreach (var (a, b) in edges)
            joined.Join(a, b);

        _of = new int[nodeCount];
        var sizes = new List<int>();
        var islandOfRoot = new int[nodeCount];
        Array.Fill(islandOfRoot, -1);
        for (var node = 0; node < nodeCount; node++)
        {
            ref var island = ref islandOfRoot[joined.RootOf(node)];
            if (island < 0)
            {
                island = sizes.Count;
                sizes.Add(0);
            }

            _of[node] = island;
            sizes[island]++;
        }

        _members = [.. sizes.Select(size => new int[size])];
        for (var node = nodeCount - 1; node >= 0; node--)
            _members[_of[node]][--CollectionsMarshal.AsSpan(sizes)[_of[node]]] = node;
    }

    /// <summary>Number of islands.</summary>
    public int Count => _members.Length;

    /// <summary>The island of a node.</summary>
    public int Of(int node) => _of[node];

    /// <summary>The island of each node.</summary>
    public ReadOnlySpan<int> OfNodes => _of;

    /// <summary>The nodes of an island.</summary>
    public int[] Members(int island) => _members[island];
}
