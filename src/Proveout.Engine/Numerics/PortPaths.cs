namespace Proveout.Engine.Numerics;

/// <summary>Which of several groups of ports a change of a network can alter, found in the graph without arithmetic.</summary>
/// <param name="network">The network.</param>
internal sealed class PortPaths(ResistorNetwork network)
{
    private readonly Dictionary<int, List<int>> _groupsOf = [];

    /// <summary>Takes a group of ports.</summary>
    /// <param name="group">Its number, higher than those before.</param>
    /// <param name="pairs">The nodes of each port; one whose nodes do not hang together is left out.</param>
    public void Add(int group, IEnumerable<(int A, int B)> pairs)
    {
        foreach (var (a, b) in pairs)
            if (network.Islands.Of(a) == network.Islands.Of(b))
                foreach (var block in new BlockWay(network.Bridges, a, b))
                    AddTo(block, group);
    }

    /// <summary>Says the groups in which changes can alter a port within one island; some more than once.</summary>
    public void Find(List<EdgeChange> changes, Action<int> onGroup)
    {
        Span<int> firstOf = stackalloc int[2 * changes.Count];
        var islands = 0;
        foreach (var change in changes)
        {
            Reach(change.A, firstOf, ref islands, onGroup);
            Reach(change.B, firstOf, ref islands, onGroup);
        }
    }

    // The ways from one node of an island to each of the others cover the ways between any two of them.
    private void Reach(int node, Span<int> firstOf, ref int islands, Action<int> onGroup)
    {
        var first = 0;
        while (first < islands && network.Islands.Of(firstOf[first]) != network.Islands.Of(node))
            first++;
        if (first == islands)
            firstOf[islands++] = node;
        foreach (var block in new BlockWay(network.Bridges, firstOf[first], node))
            if (_groupsOf.TryGetValue(block, out var groups))
                groups.ForEach(onGroup);
    }

    private void AddTo(int block, int group)
    {
        if (!_groupsOf.TryGetValue(block, out var groups))
            _groupsOf.Add(block, groups = []);
        if (groups.Count == 0 || groups[^1] != group)
            groups.Add(group);
    }
}
