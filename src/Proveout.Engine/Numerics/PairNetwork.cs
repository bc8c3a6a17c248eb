using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>A network with a few of its resistors changed, asked for one port at a time. Reused from change to change by one thread.</summary>
/// <remarks>
/// The same update as <see cref="ChangedNetwork"/>, Sherman-Morrison-Woodbury in double-double, for the other kind of question: many changes
/// and few ports each. Nothing is done for ports that are not asked for.
/// </remarks>
internal sealed class PairNetwork
{
    private readonly ResistorNetwork _network;
    private readonly ChangedPieces _pieces;
    private readonly List<NetworkUpdate> _updates = [];
    private readonly List<int> _nodes = [];
    private readonly List<(int A, int B)> _places = [];
    private readonly SmallSystem _system = new();
    private DoubleDouble[] _between = [];

    /// <summary>Prepares to change a network.</summary>
    public PairNetwork(ResistorNetwork network)
    {
        _network = network;
        _pieces = new ChangedPieces(network);
    }

    /// <summary>The pieces of the islands that the change touches.</summary>
    public ChangedPieces Pieces => _pieces;

    /// <summary>True when the change neither parts nor joins pieces.</summary>
    public bool HasPiecesAsBefore => _updates.Count == 0 || _pieces.AreAsBefore;

    /// <summary>Applies changes to the network as it was, in place of those applied before.</summary>
    /// <param name="changes">What changes; each resistor at most once; none at all leaves the network as it was.</param>
    public void Apply(List<EdgeChange> changes)
    {
        _updates.Clear();
        if (changes.Count == 0)
            return;
        _pieces.Find(changes);
        foreach (var change in changes)
            _updates.Add(new NetworkUpdate(change.A, change.B, change.DeltaConductance));
        UpdateAnchors();
        FactorUpdateMatrix();
    }

    /// <summary>Number of the piece that a node is now in.</summary>
    public int PieceOf(int node)
    {
        var piece = HasPiecesAsBefore ? 0 : _pieces.Of(node);
        return piece == 0 ? _network.Islands.Of(node) : _network.Islands.Count + piece - 1;
    }

    /// <summary>Resistance between two nodes in ohms after the change; infinite when they do not hang together.</summary>
    public double Ohms(int a, int b)
    {
        if (PieceOf(a) != PieceOf(b))
            return double.PositiveInfinity;
        var ohms = _network.Transfer(a, a) + _network.Transfer(b, b) - Twice(_network.Transfer(a, b));
        if (_updates.Count == 0)
            return Math.Max(0, (double)ohms);
        Span<DoubleDouble> volts = stackalloc DoubleDouble[_nodes.Count + 1];
        for (var place = 0; place < _nodes.Count; place++)
            volts[place] = _network.Transfer(_nodes[place], a) - _network.Transfer(_nodes[place], b);
        Span<DoubleDouble> across = stackalloc DoubleDouble[_places.Count];
        var isAcross = false;
        for (var index = 0; index < across.Length; index++)
        {
            across[index] = volts[_places[index].A] - volts[_places[index].B];
            isAcross |= across[index].High != 0;
        }

        if (!isAcross)
            return Math.Max(0, (double)ohms);
        Span<DoubleDouble> currents = stackalloc DoubleDouble[across.Length];
        _system.Solve(across, currents);
        for (var index = 0; index < across.Length; index++)
            ohms -= across[index] * currents[index];
        return Math.Max(0, (double)ohms);
    }

    private static DoubleDouble Twice(DoubleDouble value) => new(2 * value.High, 2 * value.Low);

    private void UpdateAnchors()
    {
        Span<bool> anchored = stackalloc bool[_pieces.Count + 1];
        foreach (var island in _pieces.TouchedIslands)
        {
            var anchor = _network.AnchorOf(island);
            if (anchored[_pieces.Of(anchor)])
                _updates.Add(new NetworkUpdate(anchor, NetworkUpdate.Ground, -ResistorNetwork.AnchorConductance));
            anchored[_pieces.Of(anchor)] = true;
        }

        for (var piece = 1; piece <= _pieces.Count; piece++)
            if (!anchored[piece])
                _updates.Add(new NetworkUpdate(_pieces.FirstOf(piece), NetworkUpdate.Ground, ResistorNetwork.AnchorConductance));
    }

    private void FactorUpdateMatrix()
    {
        ListNodes();
        _system.Reset(_updates.Count);
        for (var row = 0; row < _updates.Count; row++)
            for (var column = 0; column <= row; column++)
            {
                var transfer = Between(_places[row].A, _places[column].A) - Between(_places[row].A, _places[column].B)
                    - Between(_places[row].B, _places[column].A) + Between(_places[row].B, _places[column].B);
                _system.Set(row, column, row == column ? transfer + ((DoubleDouble)1 / _updates[row].DeltaConductance) : transfer);
            }

        if (!_system.Factor())
            throw new InvalidOperationException("The update of an anchored network is regular; this one is not.");
    }

    // Updates share nodes; each transfer between two nodes is summed once. Ground has the last place, where every transfer is zero.
    private void ListNodes()
    {
        _nodes.Clear();
        _places.Clear();
        foreach (var update in CollectionsMarshal.AsSpan(_updates))
        {
            PlaceOf(update.A);
            PlaceOf(update.B);
        }

        foreach (var update in CollectionsMarshal.AsSpan(_updates))
            _places.Add((PlaceOf(update.A), PlaceOf(update.B)));
        var size = _nodes.Count + 1;
        if (_between.Length < size * size)
            _between = new DoubleDouble[size * size];
        for (var one = 0; one < size; one++)
            for (var two = 0; two <= one; two++)
                _between[(one * size) + two] = _between[(two * size) + one] =
                    one == _nodes.Count ? DoubleDouble.Zero : _network.Transfer(_nodes[one], _nodes[two]);
    }

    private DoubleDouble Between(int one, int two) => _between[(one * (_nodes.Count + 1)) + two];

    private int PlaceOf(int node)
    {
        if (node == NetworkUpdate.Ground)
            return _nodes.Count;
        var place = _nodes.IndexOf(node);
        if (place >= 0)
            return place;
        _nodes.Add(node);
        return _nodes.Count - 1;
    }
}
