namespace Proveout.Engine.Numerics;

/// <summary>Which nodes of the islands that a change touches hang together after it. Reused from change to change by one thread.</summary>
internal sealed class ChangedPieces
{
    private readonly ResistorNetwork _network;
    private readonly int[] _piece;
    private readonly int[] _queue;
    private readonly List<int> _touched = [];
    private readonly List<int> _firstOfPiece = [];
    private int[] _taken = [];
    private EdgeChange[] _added = [];

    public ChangedPieces(ResistorNetwork network)
    {
        _network = network;
        _piece = new int[network.NodeCount];
        _queue = new int[network.NodeCount];
    }

    /// <summary>Islands of the network before the change that it touches.</summary>
    public IReadOnlyList<int> TouchedIslands => _touched;

    /// <summary>Number of pieces that they are now.</summary>
    public int Count => _firstOfPiece.Count;

    /// <summary>A node of a piece.</summary>
    public int FirstOf(int piece) => _firstOfPiece[piece - 1];

    /// <summary>Number of the piece that a node is in, from 1; 0 when the change does not touch its island.</summary>
    public int Of(int node) => _piece[node];

    /// <summary>Walks the touched islands without the resistors taken away and with those added.</summary>
    public void Find(IReadOnlyList<EdgeChange> changes)
    {
        Forget();
        _taken = [.. changes.Where(change => change.TakesAway).Select(change => change.Edge)];
        _added = [.. changes.Where(change => change.Edge < 0)];
        foreach (var change in changes)
        {
            Touch(_network.Islands.Of(change.A));
            Touch(_network.Islands.Of(change.B));
        }

        foreach (var island in _touched)
            foreach (var node in _network.Islands.Members(island))
                if (_piece[node] == 0)
                    Walk(node);
    }

    private void Forget()
    {
        foreach (var island in _touched)
            foreach (var node in _network.Islands.Members(island))
                _piece[node] = 0;
        _touched.Clear();
        _firstOfPiece.Clear();
    }

    private void Touch(int island)
    {
        if (!_touched.Contains(island))
            _touched.Add(island);
    }

    private void Walk(int start)
    {
        _firstOfPiece.Add(start);
        _piece[start] = _firstOfPiece.Count;
        _queue[0] = start;
        var end = 1;
        for (var next = 0; next < end; next++)
        {
            var node = _queue[next];
            foreach (var (edge, other) in _network.StepsFrom(node))
                if (_piece[other] == 0 && !_taken.AsSpan().Contains(edge))
                    Reach(other, ref end);
            foreach (var change in _added)
                if (change.A == node)
                    Reach(change.B, ref end);
                else if (change.B == node)
                    Reach(change.A, ref end);
        }
    }

    private void Reach(int node, ref int end)
    {
        if (_piece[node] != 0)
            return;
        _piece[node] = _firstOfPiece.Count;
        _queue[end++] = node;
    }
}
