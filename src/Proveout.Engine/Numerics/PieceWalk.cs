namespace Proveout.Engine.Numerics;

/// <summary>Finds the pieces that a change leaves by walking all of what it touches. Reused from change to change by one thread.</summary>
internal sealed class PieceWalk
{
    private readonly ResistorNetwork _network;
    private readonly int[] _piece;
    private readonly int[] _queue;
    private readonly List<int> _firstOfPiece = [];
    private readonly List<int> _taken = [];
    private readonly List<EdgeChange> _added = [];
    private readonly List<int> _walked = [];

    public PieceWalk(ResistorNetwork network)
    {
        _network = network;
        _piece = new int[network.NodeCount];
        _queue = new int[network.NodeCount];
    }

    /// <summary>Number of pieces.</summary>
    public int Count => _firstOfPiece.Count;

    /// <summary>A node of a piece.</summary>
    public int FirstOf(int piece) => _firstOfPiece[piece - 1];

    /// <summary>Number of the piece that a node is in, from 1; 0 when the change does not touch its island.</summary>
    public int Of(int node) => _piece[node];

    /// <summary>Walks the touched islands without the resistors taken away and with those added.</summary>
    public void Find(List<EdgeChange> changes, List<int> touchedIslands)
    {
        _firstOfPiece.Clear();
        _taken.Clear();
        _added.Clear();
        foreach (var island in _walked)
            foreach (var node in _network.Islands.Members(island))
                _piece[node] = 0;
        _walked.Clear();
        _walked.AddRange(touchedIslands);
        foreach (var change in changes)
        {
            if (change.TakesAway)
                _taken.Add(change.Edge);
            if (change.Edge < 0)
                _added.Add(change);
        }

        foreach (var island in touchedIslands)
            foreach (var node in _network.Islands.Members(island))
                if (_piece[node] == 0)
                    Walk(node);
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
                if (_piece[other] == 0 && !_taken.Contains(edge))
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
