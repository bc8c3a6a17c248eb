using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>What hangs together after a change of a network, and what of the change is more than a matter of the graph. Reused from change to change by one thread.</summary>
/// <remarks>
/// Bridges that the change cuts or alters part the touched islands into sections: runs of the search order of <see cref="Bridges"/>, in which every resistance is as it was.
/// Bridges that are altered and resistors that are added join sections as a forest of <see cref="Joints"/>, along which resistances are summed. Only what then closes a loop, or
/// changes a resistor of one, is an update of the network's inverse, and for most changes there are few or none. Where several resistors taken out of loops part a section, the
/// pieces are runs of their own.
/// </remarks>
internal sealed class ChangedPieces
{
    // Between parts that hang together no more, so that the update of the whole is regular; a bridge, so that it alters no reading within a part.
    private const double HoldingSiemens = 1;

    private readonly ResistorNetwork _network;
    private readonly LoopCuts _cuts;
    private readonly PieceRuns _parted;
    private readonly List<PieceRun> _sections = [];
    private readonly DisjointSets _joined = new();
    private readonly List<int> _touched = [];
    private readonly List<int> _firstOfSections = [];
    private readonly List<Joint> _joints = [];
    private readonly List<NetworkUpdate> _updates = [];
    private List<int> _firstOfPiece;

    /// <summary>Prepares for changes of a network.</summary>
    public ChangedPieces(ResistorNetwork network)
    {
        _network = network;
        _cuts = new LoopCuts(network);
        _parted = new PieceRuns(network, _cuts);
        (Runs, _firstOfPiece) = (_sections, _firstOfSections);
    }

    /// <summary>Islands of the network before the change that it touches.</summary>
    public List<int> TouchedIslands => _touched;

    /// <summary>True when each of these islands still is one piece of its own.</summary>
    public bool AreAsBefore { get; private set; }

    /// <summary>Number of pieces that they are now.</summary>
    public int Count => _firstOfPiece.Count;

    /// <summary>The sections that bridges which are cut or altered leave of them; the latest in the search order first.</summary>
    public List<PieceRun> Sections => _sections;

    /// <summary>Resistors that join sections as a forest.</summary>
    public ReadOnlySpan<Joint> Joints => CollectionsMarshal.AsSpan(_joints);

    /// <summary>The joint that a bridge is which the change alters; -1 when it is cut, or lies beside a joint.</summary>
    /// <param name="edge">Index of the bridge.</param>
    public int JointOf(int edge)
    {
        for (var joint = 0; joint < _joints.Count; joint++)
            if (_joints[joint].Edge == edge)
                return joint;
        return -1;
    }

    /// <summary>What is left of the change once sections are joined.</summary>
    public ReadOnlySpan<NetworkUpdate> Updates => CollectionsMarshal.AsSpan(_updates);

    /// <summary>The runs of the search order that make up the pieces, the latest first; the innermost that holds a node says its piece.</summary>
    public List<PieceRun> Runs { get; private set; }

    /// <summary>True when the pieces are the sections as they are joined.</summary>
    public bool AreSections => Runs == _sections;

    /// <summary>A node of a piece.</summary>
    public int FirstOf(int piece) => _firstOfPiece[piece - 1];

    /// <summary>Number of the piece that a node is in, from 1; 0 when the change does not touch its island.</summary>
    public int Of(int node) => AtPlace(_network.Bridges.NumberOf(node));

    /// <summary>The same of the node at a place in the search order.</summary>
    public int AtPlace(int place) => PieceRun.Holding(Runs, place) is >= 0 and var run ? Runs[run].Piece : 0;

    /// <summary>Number of the section that a node is in, from 0; -1 when the change does not touch its island.</summary>
    public int SectionOf(int node) => PieceRun.Holding(_sections, _network.Bridges.NumberOf(node));

    /// <summary>Finds the pieces without the resistors taken away and with those added.</summary>
    public void Find(List<EdgeChange> changes)
    {
        _touched.Clear();
        _joints.Clear();
        _updates.Clear();
        foreach (var change in changes)
        {
            Touch(_network.Islands.Of(change.A));
            Touch(_network.Islands.Of(change.B));
        }

        FindSections(changes);
        AreAsBefore = true;
        foreach (var change in changes)
            if (change.Edge < 0)
                Join(change, change.DeltaConductance);
            else if (_network.Bridges.Below(change.Edge) < 0)
                _updates.Add(new NetworkUpdate(change.A, change.B, change.DeltaConductance));
            else if (!change.TakesAway)
                Join(change, change.DeltaConductance + _network.EdgeOf(change.Edge).Conductance);
            else
                AreAsBefore = false;
        PieceRun.Number(_sections, _joined, _network.Bridges, _firstOfSections);
        (Runs, _firstOfPiece) = (_sections, _firstOfSections);
        if (_cuts.Find(changes))
            FindParts(changes);
    }

    private void Touch(int island)
    {
        if (!_touched.Contains(island))
            _touched.Add(island);
    }

    private void FindSections(List<EdgeChange> changes)
    {
        _sections.Clear();
        foreach (var island in _touched)
            AddSection(_network.AnchorOf(island));
        foreach (var change in changes)
            if (change.Edge >= 0 && _network.Bridges.Below(change.Edge) is >= 0 and var below)
                AddSection(below);
        _sections.Sort((one, two) => two.Start.CompareTo(one.Start));
        _joined.Reset(_sections.Count);
    }

    private void AddSection(int node) => _sections.Add(new PieceRun(_network.Bridges.NumberOf(node), _network.Bridges.EndOf(node), 0));

    private void Join(EdgeChange change, DoubleDouble siemens)
    {
        var (a, b) = (change.A, change.B);
        var (one, other) = (SectionOf(a), SectionOf(b));
        if (!_joined.Join(one, other))
        {
            _updates.Add(new NetworkUpdate(a, b, siemens));
            return;
        }

        AreAsBefore &= _network.Islands.Of(a) == _network.Islands.Of(b);
        _joints.Add(new Joint(a, b, one, other, (DoubleDouble)1 / siemens, change.Edge));
    }

    private void FindParts(List<EdgeChange> changes)
    {
        _parted.Find(changes, _sections);
        (Runs, _firstOfPiece) = (_parted.Runs, _parted.FirstOfPiece);
        AreAsBefore = false;
        HoldParts();
    }

    // Several resistors taken out of loops part what the forest holds together.
    private void HoldParts()
    {
        Span<int> heldBy = stackalloc int[_sections.Count];
        for (var piece = 1; piece <= Count; piece++)
        {
            ref var holder = ref heldBy[_joined.RootOf(SectionOf(FirstOf(piece)))];
            if (holder == 0)
                holder = piece;
            else
                _updates.Add(new NetworkUpdate(FirstOf(piece), FirstOf(holder), HoldingSiemens));
        }
    }
}
