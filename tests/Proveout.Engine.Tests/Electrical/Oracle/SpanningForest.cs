namespace Proveout.Engine.Tests.Electrical;

/// <summary>The spanning forest of least resistance (Kruskal, Proceedings of the AMS 7 (1956) 48-50).</summary>
internal sealed class SpanningForest
{
    private readonly Resistor[] _resistors;
    private readonly int[] _root;
    private readonly int[] _depth;
    private readonly int[] _upward;

    public SpanningForest(int nodeCount, Resistor[] resistors)
    {
        _resistors = resistors;
        _root = new int[nodeCount];
        _depth = new int[nodeCount];
        _upward = new int[nodeCount];
        var group = Enumerable.Range(0, nodeCount).ToArray();
        var branches = Enumerable.Range(0, nodeCount).Select(_ => new List<int>()).ToArray();
        foreach (var index in Enumerable.Range(0, resistors.Length).OrderBy(index => resistors[index].Ohms))
        {
            var (a, b) = (Find(group, resistors[index].A), Find(group, resistors[index].B));
            if (a == b)
            {
                Chords.Add(index);
                continue;
            }

            group[a] = b;
            branches[resistors[index].A].Add(index);
            branches[resistors[index].B].Add(index);
        }

        Array.Fill(_root, -1);
        for (var node = 0; node < nodeCount; node++)
            if (_root[node] < 0)
                Hang(node, branches);
    }

    /// <summary>Indices of the resistors that are not branches of the forest.</summary>
    public List<int> Chords { get; } = [];

    /// <summary>True when two nodes hang together.</summary>
    public bool AreTogether(int a, int b) => _root[a] == _root[b];

    /// <summary>The branches on the way between two nodes of a tree; the sign is that of a current from the first to the second, as the resistor counts it.</summary>
    public List<(int Resistor, int Sign)> Path(int from, int to)
    {
        List<(int, int)> path = [];
        while (from != to)
            if (_depth[from] >= _depth[to])
            {
                path.Add((_upward[from], _resistors[_upward[from]].A == from ? 1 : -1));
                from = Above(from);
            }
            else
            {
                path.Add((_upward[to], _resistors[_upward[to]].B == to ? 1 : -1));
                to = Above(to);
            }

        return path;
    }

    private int Above(int node) => _resistors[_upward[node]] is var branch && branch.A == node ? branch.B : branch.A;

    private void Hang(int root, List<int>[] branches)
    {
        _root[root] = root;
        var queue = new Queue<int>([root]);
        while (queue.TryDequeue(out var node))
            foreach (var branch in branches[node])
            {
                var other = _resistors[branch].A == node ? _resistors[branch].B : _resistors[branch].A;
                if (_root[other] >= 0)
                    continue;
                (_root[other], _depth[other], _upward[other]) = (root, _depth[node] + 1, branch);
                queue.Enqueue(other);
            }
    }

    private static int Find(int[] group, int node)
    {
        while (group[node] != node)
            node = group[node] = group[group[node]];
        return node;
    }
}
