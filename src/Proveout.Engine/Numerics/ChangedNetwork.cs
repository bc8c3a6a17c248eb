using System.Runtime.InteropServices;

namespace Proveout.Engine.Numerics;

/// <summary>A network with a few of its resistors changed, without factoring it anew. Reused from change to change by one thread.</summary>
/// <remarks>
/// Sherman-Morrison-Woodbury: with the changes U diag(d) Uᵀ, the matrix Z of transfer resistances becomes Z - ZU (diag(1/d) + UᵀZU)⁻¹ UᵀZ
/// (Golub and Van Loan, Matrix Computations, 2.1.4). The small matrix is formed and inverted in double-double, for opening a joint
/// subtracts nearly equal numbers. Pieces that come off get an anchor of their own and pieces that join lose all but one, so that the
/// small matrix is regular whatever the change; which pieces there are is found in the graph and not by a numerical threshold.
/// </remarks>
internal sealed class ChangedNetwork
{
    private readonly Ports _ports;
    private readonly ResistorNetwork _network;
    private readonly ChangedPieces _pieces;
    private readonly List<NetworkUpdate> _updates = [];
    private readonly SmallInverse _inverse = new();
    private readonly UpdatePotentials _potentials;
    private readonly PortTransfers _transfers;

    /// <summary>Prepares to change the network of some ports.</summary>
    /// <param name="ports">The ports.</param>
    /// <param name="likewise">A changed network of other ports whose room this one may share; each is asked only until the other is changed.</param>
    public ChangedNetwork(Ports ports, ChangedNetwork? likewise = null)
    {
        (_ports, _network) = (ports, ports.Network);
        _pieces = likewise?._pieces ?? new ChangedPieces(_network);
        _potentials = likewise?._potentials ?? new UpdatePotentials(_network);
        _transfers = new PortTransfers(ports, _potentials);
    }

    /// <summary>True when the change neither parts nor joins pieces.</summary>
    public bool HasPiecesAsBefore => _pieces.AreAsBefore;

    /// <summary>The pieces of the islands that the change touches.</summary>
    public ChangedPieces Pieces => _pieces;

    /// <summary>Islands of the network as it was that the change touches.</summary>
    public List<int> TouchedIslands => _pieces.TouchedIslands;

    /// <summary>Applies changes to the network as it was, in place of those applied before.</summary>
    /// <param name="changes">What changes; each resistor at most once; at least one change.</param>
    public void Apply(List<EdgeChange> changes)
    {
        _pieces.Find(changes);
        _updates.Clear();
        foreach (var change in changes)
            _updates.Add(new NetworkUpdate(change.A, change.B, change.DeltaConductance));
        UpdateAnchors();
        _potentials.Take(CollectionsMarshal.AsSpan(_updates));
        InvertUpdateMatrix();
        _transfers.Fill(_pieces, _inverse);
    }

    /// <summary>Numbers of the pieces that a port's nodes are now in.</summary>
    public (int OfA, int OfB) PiecesOf(int port)
    {
        var (a, b) = _ports.Pairs[port];
        return (PieceOf(_pieces.Of(_ports.Nodes[a]), _ports.Islands[a]), PieceOf(_pieces.Of(_ports.Nodes[b]), _ports.Islands[b]));
    }

    /// <summary>True when the change touches the island of a node of a port.</summary>
    public bool Touches(int port) => (_transfers.PieceAt(_ports.Pairs[port].A) | _transfers.PieceAt(_ports.Pairs[port].B)) != 0;

    /// <summary>True when the change may alter a port; false when it surely leaves it as it was, to ten digits.</summary>
    /// <param name="port">Number of the port.</param>
    /// <param name="ohms">Resistance after the change; infinite when the port's nodes do not hang together.</param>
    public bool Alters(int port, out double ohms)
    {
        ohms = double.PositiveInfinity;
        var (a, b) = _ports.Pairs[port];
        var pieceOfA = _transfers.PieceAt(a);
        if (pieceOfA != _transfers.PieceAt(b))
            return _ports.IsOneIsland(port);
        if (pieceOfA == 0 || (_transfers.IsUntouched(a, b, _ports.RootOfAnchoredOhms(port)) && _ports.IsOneIsland(port)))
            return false;
        ohms = _transfers.Correct(a, b, _ports.AnchoredOhms(port));
        if (double.IsNaN(ohms))
            ohms = ExactResistance(_ports.Nodes[a], _ports.Nodes[b]);
        return true;
    }

    // While all pieces are as before, they keep the numbers of their islands.
    private int PieceOf(int piece, int island) => piece == 0 || _pieces.AreAsBefore ? island : _network.Islands.Count + piece - 1;

    private double ExactResistance(int a, int b)
    {
        var size = _updates.Count;
        Span<DoubleDouble> transfer = stackalloc DoubleDouble[size];
        for (var index = 0; index < size; index++)
            transfer[index] = _potentials.Between(index, new NetworkUpdate(a, b, 0));
        var resistance = _network.AnchoredResistance(a, b);
        for (var row = 0; row < size; row++)
            for (var column = 0; column < size; column++)
                resistance -= transfer[row] * _inverse[row, column] * transfer[column];
        return Math.Max(0, (double)resistance);
    }

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

    private void InvertUpdateMatrix()
    {
        _inverse.Reset(_updates.Count);
        for (var row = 0; row < _updates.Count; row++)
        {
            for (var column = 0; column <= row; column++)
                _inverse.Set(row, column, _potentials.Between(row, _updates[column]));
            _inverse.Set(row, row, _inverse[row, row] + ((DoubleDouble)1 / _updates[row].DeltaConductance));
        }

        if (!_inverse.Invert())
            throw new InvalidOperationException("The update of an anchored network is regular; this one is not.");
    }
}
