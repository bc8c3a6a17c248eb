using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>What hangs together after a change of a network, and what of the change is more than a matter of the graph. Reused from change to change by one thread.</summary>
/// <remarks>
/// Bridges that the change cuts or alters part the touched islands into sections: runs of the search order of <see cref="Bridges"/>, in which every resistance is as it was.
/// Bridges that are altered and resistors that are added join sections as a forest of <see cref="Joints"/>, along which resistances are summed. Only what then closes a loop, or
/// changes a resistor of one, is an update of the network's inverse, and for most changes there are few or none.
/// </remarks>
internal sealed class ChangedPieces(ResistorNetwork network)
{
    // Between parts that hang together no more, so that the update of the whole is regular; a bridge, so that it alters no reading within a part.
    private const double HoldingSiemens = 1;

    private readonly PieceWalk _walk = new(network);
    private readonly List<(int Start, int End, int Piece)> _runs = [];
    private readonly List<int> _rootOf = [];
    private readonly List<int> _touched = [];
    private readonly List<int> _firstOfPiece = [];
    private readonly List<Joint> _joints = [];
    private readonly List<NetworkUpdate> _updates = [];
    private bool _isWalked;

    /// <summary>Islands of the network before the change that it touches.</summary>
    public List<int> TouchedIslands => _touched;

    /// <summary>True when each of these islands still is one piece of its own.</summary>
    public bool AreAsBefore { get; private set; }

    /// <summary>Number of pieces that they are now.</summary>
    public int Count => _isWalked ? _walk.Count : _firstOfPiece.Count;

    /// <summary>Number of sections that bridges which are cut or altered leave of them.</summary>
    public int SectionCount => _runs.Count;

    /// <summary>Resistors that join sections as a forest.</summary>
    public ReadOnlySpan<Joint> Joints => CollectionsMarshal.AsSpan(_joints);

    /// <summary>What is left of the change once sections are joined.</summary>
    public ReadOnlySpan<NetworkUpdate> Updates => CollectionsMarshal.AsSpan(_updates);

    /// <summary>A node of a piece.</summary>
    public int FirstOf(int piece) => _isWalked ? _walk.FirstOf(piece) : _firstOfPiece[piece - 1];

    /// <summary>Number of the piece that a node is in, from 1; 0 when the change does not touch its island.</summary>
    public int Of(int node) => _isWalked ? _walk.Of(node) : SectionOf(node) is >= 0 and var section ? _runs[section].Piece : 0;

    /// <summary>Number of the section that a node is in, from 0; -1 when the change does not touch its island.</summary>
    /// <remarks>Runs lie inside or beside each other and the latest comes first: the first one that holds a node is the innermost.</remarks>
    public int SectionOf(int node)
    {
        var number = network.Bridges.NumberOf(node);
        var runs = CollectionsMarshal.AsSpan(_runs);
        for (var section = 0; section < runs.Length; section++)
            if (runs[section].Start <= number && number < runs[section].End)
                return section;
        return -1;
    }

    /// <summary>True when the pieces are runs of the search order of <see cref="Bridges"/>, of which the innermost that holds a node says its piece.</summary>
    public bool AreRuns => !_isWalked;

    /// <summary>The runs, with their first place, one past their last, and their piece.</summary>
    public List<(int Start, int End, int Piece)> Runs => _runs;

    /// <summary>Finds the pieces without the resistors taken away and with those added.</summary>
    public void Find(List<EdgeChange> changes)
    {
        _touched.Clear();
        _joints.Clear();
        _updates.Clear();
        foreach (var change in changes)
        {
            Touch(network.Islands.Of(change.A));
            Touch(network.Islands.Of(change.B));
        }

        FindSections(changes);
        AreAsBefore = true;
        foreach (var change in changes)
            if (change.Edge < 0)
                Join(change.A, change.B, change.DeltaConductance);
            else if (network.Bridges.Below(change.Edge) < 0)
                _updates.Add(new NetworkUpdate(change.A, change.B, change.DeltaConductance));
            else if (!change.TakesAway)
                Join(change.A, change.B, change.DeltaConductance + network.EdgeOf(change.Edge).Conductance);
            else
                AreAsBefore = false;
        NumberPieces();
        _isWalked = network.CutLabels.MayPart(changes);
        if (!_isWalked)
            return;
        AreAsBefore = false;
        _walk.Find(changes, _touched);
        HoldParts();
    }

    private void Touch(int island)
    {
        if (!_touched.Contains(island))
            _touched.Add(island);
    }

    private void FindSections(List<EdgeChange> changes)
    {
        _runs.Clear();
        foreach (var island in _touched)
            AddRun(network.AnchorOf(island));
        foreach (var change in changes)
            if (change.Edge >= 0 && network.Bridges.Below(change.Edge) is >= 0 and var below)
                AddRun(below);
        _runs.Sort((one, two) => two.Start.CompareTo(one.Start));
        _rootOf.Clear();
        for (var section = 0; section < _runs.Count; section++)
            _rootOf.Add(section);
    }

    private void AddRun(int node) => _runs.Add((network.Bridges.NumberOf(node), network.Bridges.EndOf(node), 0));

    private void Join(int a, int b, DoubleDouble siemens)
    {
        var (one, other) = (SectionOf(a), SectionOf(b));
        if (Root(one) == Root(other))
        {
            _updates.Add(new NetworkUpdate(a, b, siemens));
            return;
        }

        AreAsBefore &= network.Islands.Of(a) == network.Islands.Of(b);
        _rootOf[Root(one)] = Root(other);
        _joints.Add(new Joint(a, b, one, other, (DoubleDouble)1 / siemens));
    }

    private int Root(int section)
    {
        while (_rootOf[section] != section)
            section = _rootOf[section];
        return section;
    }

    private void NumberPieces()
    {
        Span<int> numbers = stackalloc int[_runs.Count];
        _firstOfPiece.Clear();
        var runs = CollectionsMarshal.AsSpan(_runs);
        for (var section = 0; section < runs.Length; section++)
        {
            ref var number = ref numbers[Root(section)];
            if (number == 0)
            {
                _firstOfPiece.Add(network.Bridges.NodeAt(runs[section].Start));
                number = _firstOfPiece.Count;
            }

            runs[section].Piece = number;
        }
    }

    // Several resistors taken out of loops may part what the forest holds together.
    private void HoldParts()
    {
        Span<int> heldBy = stackalloc int[_runs.Count];
        for (var piece = 1; piece <= _walk.Count; piece++)
        {
            ref var holder = ref heldBy[Root(SectionOf(_walk.FirstOf(piece)))];
            if (holder == 0)
                holder = piece;
            else
                _updates.Add(new NetworkUpdate(_walk.FirstOf(piece), _walk.FirstOf(holder), HoldingSiemens));
        }
    }
}
