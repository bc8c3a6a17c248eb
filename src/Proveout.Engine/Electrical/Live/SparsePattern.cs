namespace Proveout.Engine.Electrical;

/// <summary>Where the factor of a network may hold numbers, whatever its branches conduct; nodes are named by their place in the order of elimination.</summary>
/// <remarks>Made once for a circuit, and then only read: all threads share it.</remarks>
internal sealed class SparsePattern
{
    private readonly int _nodes;

    /// <summary>Makes it.</summary>
    /// <param name="position">Place of each node in the order of elimination.</param>
    /// <param name="branches">Both nodes of every branch that may ever conduct; −1 is earth, at potential 0.</param>
    public SparsePattern(int[] position, (int A, int B)[] branches)
    {
        (_nodes, Position) = (position.Length, position);
        (One, Two) = (new int[branches.Length], new int[branches.Length]);
        for (var branch = 0; branch < branches.Length; branch++)
        {
            var (a, b) = (At(branches[branch].A), At(branches[branch].B));
            (One[branch], Two[branch]) = a == b ? (-1, -1) : (Math.Min(a, b), Math.Max(a, b));
        }

        NodeAt = new int[_nodes];
        for (var node = 0; node < _nodes; node++)
            NodeAt[position[node]] = node;
        (Parent, TouchStart, ColumnStart, RowStart) = (new int[_nodes], new int[_nodes + 1], new int[_nodes + 1], new int[_nodes + 1]);
        GatherTouches();
        FindRows();
        PlaceNumbers();
    }

    /// <summary>Place of each node in the order of elimination.</summary>
    public int[] Position { get; }

    /// <summary>The node at each place.</summary>
    public int[] NodeAt { get; }

    /// <summary>The end of each branch that is eliminated first; −1 for earth.</summary>
    public int[] One { get; }

    /// <summary>The other end of each branch; of a branch to earth the end that is not earth, −1 when neither is.</summary>
    public int[] Two { get; }

    /// <summary>Node above each in the elimination tree; −1 for a root.</summary>
    public int[] Parent { get; }

    /// <summary>Where the branches at each node begin in <see cref="Touch"/>.</summary>
    public int[] TouchStart { get; }

    public int[] Touch { get; private set; } = [];

    /// <summary>Where each column of the factor begins.</summary>
    public int[] ColumnStart { get; }

    /// <summary>The row of each number of the factor, ascending in each column.</summary>
    public int[] FactorRow { get; private set; } = [];

    /// <summary>Where each row of the factor begins in <see cref="RowNode"/>.</summary>
    public int[] RowStart { get; }

    /// <summary>The columns of each row, in the order of elimination along the tree.</summary>
    public int[] RowNode { get; private set; } = [];

    /// <summary>The place in the factor of each number of a row.</summary>
    public int[] RowPlace { get; private set; } = [];

    public int FactorLength => ColumnStart[_nodes];

    /// <summary>Place of a node in the order of elimination; −1 for earth.</summary>
    public int At(int node) => node < 0 ? -1 : Position[node];

    /// <summary>Places whose potentials those of some nodes follow from, these included, the last in the order of elimination first.</summary>
    public int[] Above(IEnumerable<int> nodes)
    {
        var above = new SortedSet<int>();
        foreach (var node in nodes)
            for (var place = At(node); place >= 0 && above.Add(place); place = Parent[place])
            {
            }

        return [.. above.Reverse()];
    }

    /// <summary>The places that are not among some, the last in the order of elimination first.</summary>
    public int[] Except(int[] places) => [.. Enumerable.Range(0, _nodes).Except(places).OrderDescending()];

    private void GatherTouches()
    {
        foreach (var end in One.Concat(Two).Where(end => end >= 0))
            TouchStart[end + 1]++;
        for (var node = 0; node < _nodes; node++)
            TouchStart[node + 1] += TouchStart[node];
        Touch = new int[TouchStart[_nodes]];
        var fill = TouchStart.AsSpan(0, _nodes).ToArray();
        for (var branch = 0; branch < One.Length; branch++)
        {
            if (One[branch] >= 0)
                Touch[fill[One[branch]]++] = branch;
            if (Two[branch] >= 0)
                Touch[fill[Two[branch]]++] = branch;
        }
    }

    // The columns of a row are what its branches reach along the tree as it stands below the row.
    private void FindRows()
    {
        var rows = new List<int>(4 * _nodes);
        var (order, flag, stack) = (new int[_nodes], new int[_nodes], new int[_nodes]);
        for (var row = 0; row < _nodes; row++)
        {
            (Parent[row], flag[row], RowStart[row]) = (-1, row, rows.Count);
            var top = _nodes;
            for (var at = TouchStart[row]; at < TouchStart[row + 1]; at++)
            {
                if (Two[Touch[at]] != row || One[Touch[at]] < 0)
                    continue;
                var length = 0;
                for (var node = One[Touch[at]]; flag[node] != row; node = Parent[node])
                {
                    if (Parent[node] < 0)
                        Parent[node] = row;
                    (stack[length++], flag[node]) = (node, row);
                }

                while (length > 0)
                    order[--top] = stack[--length];
            }

            rows.AddRange(order.AsSpan(top));
        }

        RowStart[_nodes] = rows.Count;
        RowNode = [.. rows];
    }

    private void PlaceNumbers()
    {
        foreach (var node in RowNode)
            ColumnStart[node + 1]++;
        for (var node = 0; node < _nodes; node++)
            ColumnStart[node + 1] += ColumnStart[node];
        (FactorRow, RowPlace) = (new int[RowNode.Length], new int[RowNode.Length]);
        var fill = ColumnStart.AsSpan(0, _nodes).ToArray();
        for (var row = 0; row < _nodes; row++)
            for (var at = RowStart[row]; at < RowStart[row + 1]; at++)
            {
                RowPlace[at] = fill[RowNode[at]]++;
                FactorRow[RowPlace[at]] = row;
            }
    }
}
