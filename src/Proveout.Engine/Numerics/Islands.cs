namespace Proveout.Engine.Numerics;

/// <summary>Which nodes of a graph hang together.</summary>
internal sealed class Islands
{
    private readonly int[] _of;
    private readonly List<int[]> _members = [];

    /// <summary>Finds the islands of a graph.</summary>
    public Islands(int nodeCount, IEnumerable<(int A, int B)> edges)
    {
        var parent = new int[nodeCount];
        for (var node = 0; node < nodeCount; node++)
            parent[node] = node;
        foreach (var (a, b) in edges)
            parent[Root(parent, a)] = Root(parent, b);

        _of = new int[nodeCount];
        foreach (var group in Enumerable.Range(0, nodeCount).GroupBy(node => Root(parent, node)))
        {
            var members = group.ToArray();
            foreach (var node in members)
                _of[node] = _members.Count;
            _members.Add(members);
        }
    }

    /// <summary>Number of islands.</summary>
    public int Count => _members.Count;

    /// <summary>The island of a node.</summary>
    public int Of(int node) => _of[node];

    /// <summary>The island of each node.</summary>
    public ReadOnlySpan<int> OfNodes => _of;

    /// <summary>The nodes of an island.</summary>
    public int[] Members(int island) => _members[island];

    private static int Root(int[] parent, int node)
    {
        while (parent[node] != node)
            node = parent[node] = parent[parent[node]];
        return node;
    }
}
