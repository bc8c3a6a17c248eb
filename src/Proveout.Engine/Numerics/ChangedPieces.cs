namespace Proveout.Engine.Numerics;

/// <summary>Which nodes of the islands that a change touches hang together after it. Reused from change to change by one thread.</summary>
/// <remarks>
/// Most changes take bridges away, or one resistor of a loop, which parts nothing: then each piece is a few runs of the search order of
/// <see cref="Bridges"/>. Only when several resistors of loops go at once is the network walked.
/// </remarks>
internal sealed class ChangedPieces(ResistorNetwork network)
{
    private readonly PieceWalk _walk = new(network);
    private readonly List<(int Start, int End, int Piece)> _runs = [];
    private readonly List<int> _touched = [];
    private readonly List<int> _firstOfPiece = [];
    private bool _isWalked;

    /// <summary>Islands of the network before the change that it touches.</summary>
    public List<int> TouchedIslands => _touched;

    /// <summary>True when each of these islands still is one piece of its own.</summary>
    public bool AreAsBefore => !_isWalked && _runs.Count == _touched.Count && _firstOfPiece.Count == _touched.Count;

    /// <summary>Number of pieces that they are now.</summary>
    public int Count => _isWalked ? _walk.Count : _firstOfPiece.Count;

    /// <summary>A node of a piece.</summary>
    public int FirstOf(int piece) => _isWalked ? _walk.FirstOf(piece) : _firstOfPiece[piece - 1];

    /// <summary>Number of the piece that a node is in, from 1; 0 when the change does not touch its island.</summary>
    public int Of(int node)
    {
        if (_isWalked)
            return _walk.Of(node);
        var number = network.Bridges.NumberOf(node);
        foreach (var run in _runs)
            if (run.Start <= number && number < run.End)
                return run.Piece;
        return 0;
    }

    /// <summary>True when the pieces are runs of the search order of <see cref="Bridges"/>, of which the innermost that holds a node says its piece.</summary>
    public bool AreRuns => !_isWalked;

    /// <summary>The runs, with their first place, one past their last, and their piece.</summary>
    public List<(int Start, int End, int Piece)> Runs => _runs;

    /// <summary>Finds the pieces without the resistors taken away and with those added.</summary>
    public void Find(List<EdgeChange> changes)
    {
        _touched.Clear();
        foreach (var change in changes)
        {
            Touch(network.Islands.Of(change.A));
            Touch(network.Islands.Of(change.B));
        }

        _isWalked = TakesSeveralOfLoops(changes);
        if (_isWalked)
            _walk.Find(changes, _touched);
        else
            FindRuns(changes);
    }

    private void Touch(int island)
    {
        if (!_touched.Contains(island))
            _touched.Add(island);
    }

    private bool TakesSeveralOfLoops(List<EdgeChange> changes)
    {
        var count = 0;
        foreach (var change in changes)
            if (change.TakesAway && network.Bridges.Below(change.Edge) < 0)
                count++;
        return count > 1;
    }

    private void FindRuns(List<EdgeChange> changes)
    {
        _runs.Clear();
        foreach (var island in _touched)
            AddRun(network.AnchorOf(island));
        foreach (var change in changes)
            if (change.TakesAway && network.Bridges.Below(change.Edge) is >= 0 and var below)
                AddRun(below);
        // Runs lie inside or beside each other: the one with the latest start that holds a node is the innermost.
        _runs.Sort((one, two) => two.Start.CompareTo(one.Start));
        foreach (var change in changes)
            if (change.Edge < 0)
                Join(Of(change.A), Of(change.B));
        NumberPieces();
    }

    private void AddRun(int node) => _runs.Add((network.Bridges.NumberOf(node), network.Bridges.EndOf(node), _runs.Count + 1));

    private void Join(int one, int two)
    {
        for (var index = 0; one != two && index < _runs.Count; index++)
            if (_runs[index].Piece == two)
                _runs[index] = (_runs[index].Start, _runs[index].End, one);
    }

    private void NumberPieces()
    {
        Span<int> numbers = stackalloc int[_runs.Count + 1];
        _firstOfPiece.Clear();
        for (var index = 0; index < _runs.Count; index++)
        {
            ref var number = ref numbers[_runs[index].Piece];
            if (number == 0)
            {
                _firstOfPiece.Add(network.Bridges.NodeAt(_runs[index].Start));
                number = _firstOfPiece.Count;
            }

            _runs[index] = (_runs[index].Start, _runs[index].End, number);
        }
    }
}
