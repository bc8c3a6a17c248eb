namespace Proveout.Engine.Numerics;

/// <summary>Which nodes of the islands that a change touches hang together after it.</summary>
internal sealed class ChangedPieces
{
    private readonly int[] _piece;
    private readonly List<List<int>> _members = [];

    /// <summary>Walks the touched islands without the resistors taken away and with those added.</summary>
    public ChangedPieces(ResistorNetwork network, IReadOnlyList<EdgeChange> changes)
    {
        _piece = new int[network.NodeCount];
        var touched = changes.SelectMany(change => new[] { network.Islands.Of(change.A), network.Islands.Of(change.B) }).Distinct().ToArray();
        TouchedIslands = touched;
        foreach (var island in touched)
            foreach (var node in network.Islands.Members(island))
                if (_piece[node] == 0)
                    Walk(network, changes, node);
    }

    /// <summary>Islands of the network before the change that it touches.</summary>
    public IReadOnlyList<int> TouchedIslands { get; }

    /// <summary>Nodes of each piece after the change.</summary>
    public IReadOnlyList<List<int>> Members => _members;

    /// <summary>Number of the piece that a node is in, from 1; 0 when the change does not touch its island.</summary>
    public int Of(int node) => _piece[node];

    private void Walk(ResistorNetwork network, IReadOnlyList<EdgeChange> changes, int start)
    {
        List<int> members = [start];
        _members.Add(members);
        _piece[start] = _members.Count;
        for (var next = 0; next < members.Count; next++)
        {
            var node = members[next];
            foreach (var index in network.EdgesAtNode(node))
                if (!IsTakenAway(changes, index))
                    Reach(network.EdgeOf(index).A == node ? network.EdgeOf(index).B : network.EdgeOf(index).A, members);
            foreach (var change in changes)
                if (change.Edge < 0 && (change.A == node || change.B == node))
                    Reach(change.A == node ? change.B : change.A, members);
        }
    }

    private void Reach(int node, List<int> members)
    {
        if (_piece[node] != 0)
            return;
        _piece[node] = _members.Count;
        members.Add(node);
    }

    private static bool IsTakenAway(IReadOnlyList<EdgeChange> changes, int edge)
    {
        foreach (var change in changes)
            if (change.TakesAway && change.Edge == edge)
                return true;
        return false;
    }
}
