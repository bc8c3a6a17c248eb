namespace Proveout.Engine.Numerics;

/// <summary>A network with a few of its resistors changed, without factoring it anew. Reused from change to change by one thread.</summary>
/// <remarks>
/// What the change does to bridges is a matter of the graph (<see cref="ChangedPieces"/>); the rest are updates by Sherman-Morrison-Woodbury: with
/// U diag(d) Uᵀ, the matrix Z of transfer resistances becomes Z - ZU (diag(1/d) + UᵀZU)⁻¹ UᵀZ (Golub and Van Loan, Matrix Computations, 2.1.4). The small matrix is
/// formed and inverted in double-double, for opening a resistor of a loop subtracts nearly equal numbers.
/// </remarks>
internal sealed class ChangedNetwork
{
    private readonly Ports _ports;
    private readonly ResistorNetwork _network;
    private readonly ChangedPieces _pieces;
    private readonly SmallInverse _inverse = new();
    private readonly ColumnTransfers _transfers;
    private readonly SectionFlows _flows;
    private readonly PortTransfers _portTransfers;

    /// <summary>Prepares to change the network of some ports.</summary>
    /// <param name="ports">The ports.</param>
    /// <param name="likewise">A changed network of other ports whose room this one may share; each is asked only until the other is changed.</param>
    public ChangedNetwork(Ports ports, ChangedNetwork? likewise = null)
    {
        (_ports, _network) = (ports, ports.Network);
        _pieces = likewise?._pieces ?? new ChangedPieces(_network);
        _transfers = likewise?._transfers ?? new ColumnTransfers(_network);
        _flows = likewise?._flows ?? new SectionFlows(_pieces, _network, _transfers);
        _portTransfers = new PortTransfers(ports, _pieces, _flows, _transfers);
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
        _transfers.Clear();
        _flows.Take();
        InvertUpdateMatrix();
        _portTransfers.Fill(_inverse);
    }

    /// <summary>Sets the bits of the ports within one island that the change may alter.</summary>
    public void AddTouched(PortPaths paths, Span<ulong> mask) => paths.Add(_pieces, _flows, mask);

    /// <summary>Numbers of the pieces that a port's nodes are now in.</summary>
    public (int OfA, int OfB) PiecesOf(int port)
    {
        var (a, b) = _ports.Pairs[port];
        return (PieceOf(_portTransfers.PieceAt(a), _ports.Islands[a]), PieceOf(_portTransfers.PieceAt(b), _ports.Islands[b]));
    }

    /// <summary>True when the change touches the island of a node of a port.</summary>
    public bool Touches(int port) => (_portTransfers.PieceAt(_ports.Pairs[port].A) | _portTransfers.PieceAt(_ports.Pairs[port].B)) != 0;

    /// <summary>True when the change may alter a port; false when it surely leaves it as it was, to ten digits.</summary>
    /// <param name="port">Number of the port.</param>
    /// <param name="ohms">Resistance after the change; infinite when the port's nodes do not hang together.</param>
    public bool Alters(int port, out double ohms)
    {
        ohms = double.PositiveInfinity;
        var (a, b) = _ports.Pairs[port];
        var piece = _portTransfers.PieceAt(a);
        if (piece != _portTransfers.PieceAt(b))
            return _ports.IsOneIsland(port);
        if (piece == 0)
            return false;
        if (_portTransfers.AreInOneSection(a, b))
        {
            if (_portTransfers.IsUntouched(a, b, _ports.RootOfOhms(port)))
                return false;
            ohms = _ports.Ohms(port);
        }
        else
        {
            ohms = (double)_flows.Ohms(_ports.Nodes[a], _ports.Nodes[b]);
        }

        ohms = _portTransfers.Correct(a, b, ohms);
        if (double.IsNaN(ohms))
            ohms = ExactResistance(_ports.Nodes[a], _ports.Nodes[b]);
        return true;
    }

    // While all pieces are as before, they keep the numbers of their islands.
    private int PieceOf(int piece, int island) => piece == 0 || _pieces.AreAsBefore ? island : _network.Islands.Count + piece - 1;

    private double ExactResistance(int a, int b)
    {
        var size = _pieces.Updates.Length;
        Span<DoubleDouble> volts = stackalloc DoubleDouble[size];
        for (var update = 0; update < size; update++)
            volts[update] = _flows.At(update, a) - _flows.At(update, b);
        var resistance = _flows.Ohms(a, b);
        for (var row = 0; row < size; row++)
            for (var column = 0; column < size; column++)
                resistance -= volts[row] * _inverse[row, column] * volts[column];
        return Math.Max(0, (double)resistance);
    }

    private void InvertUpdateMatrix()
    {
        var updates = _pieces.Updates;
        _inverse.Reset(updates.Length);
        for (var row = 0; row < updates.Length; row++)
        {
            for (var column = 0; column <= row; column++)
                _inverse.Set(row, column, _flows.Between(row, updates[column]));
            _inverse.Set(row, row, _inverse[row, row] + ((DoubleDouble)1 / updates[row].DeltaConductance));
        }

        if (!_inverse.Invert())
            throw new InvalidOperationException("The update of a network that hangs together is regular; this one is not.");
    }
}
