namespace Proveout.Engine.Numerics;

/// <summary>A network with a few of its resistors changed, without factoring it anew, asked for one resistance at a time. Reused from change to change by one thread.</summary>
/// <remarks>
/// What the change does to bridges is a matter of the graph (<see cref="ChangedPieces"/>); the rest are updates by Sherman-Morrison-Woodbury: with
/// U diag(d) Uᵀ, the matrix Z of transfer resistances becomes Z - ZU (diag(1/d) + UᵀZU)⁻¹ UᵀZ (Golub and Van Loan, Matrix Computations, 2.1.4). The small matrix is
/// formed and inverted in double-double, for opening a resistor of a loop subtracts nearly equal numbers.
/// </remarks>
internal sealed class ChangedNetwork
{
    private readonly ResistorNetwork _network;
    private DoubleDouble[] _portAmperes = [];
    private BlockFlow _portFlow;
    private bool _isPortChanged;
    private bool _isChanged;

    /// <summary>Prepares to change a network.</summary>
    public ChangedNetwork(ResistorNetwork network)
    {
        _network = network;
        Pieces = new ChangedPieces(network);
        Flows = new SectionFlows(Pieces, network);
        IslandVolts = new IslandVolts(network);
    }

    /// <summary>The pieces of the islands that the change touches.</summary>
    public ChangedPieces Pieces { get; }

    /// <summary>What the updates send through the sections.</summary>
    public SectionFlows Flows { get; }

    /// <summary>Room for the volts of a whole island, of the network as it was.</summary>
    public IslandVolts IslandVolts { get; }

    /// <summary>The inverse of the matrix of the updates.</summary>
    public SmallInverse Inverse { get; } = new();

    /// <summary>True when the change neither parts nor joins pieces.</summary>
    public bool HasPiecesAsBefore => !_isChanged || Pieces.AreAsBefore;

    /// <summary>Applies changes to the network as it was, in place of those applied before.</summary>
    /// <param name="changes">What changes; each resistor at most once; none at all leaves the network as it was.</param>
    public void Apply(List<EdgeChange> changes)
    {
        _isChanged = changes.Count > 0;
        if (!_isChanged)
            return;
        Pieces.Find(changes);
        Flows.Take();
        InvertUpdateMatrix();
    }

    /// <summary>Number of the piece that a node is now in; while all pieces are as before, they keep the numbers of their islands.</summary>
    public int PieceOf(int node)
    {
        var piece = HasPiecesAsBefore ? 0 : Pieces.Of(node);
        return piece == 0 ? _network.Islands.Of(node) : _network.Islands.Count + piece - 1;
    }

    /// <summary>Resistance between two nodes in ohms after the change; infinite when they do not hang together.</summary>
    public double Ohms(int a, int b)
    {
        if (PieceOf(a) != PieceOf(b))
            return double.PositiveInfinity;
        return !_isChanged || Pieces.SectionOf(a) < 0 ? _network.Resistance(a, b) : OhmsWithin(a, b);
    }

    /// <summary>Resistance between two nodes of one piece of the islands that the change touches, in ohms.</summary>
    public double OhmsWithin(int a, int b)
    {
        var (ofA, ofB) = (Pieces.SectionOf(a), Pieces.SectionOf(b));
        Span<DoubleDouble> volts = stackalloc DoubleDouble[Pieces.Updates.Length];
        for (var update = 0; update < volts.Length; update++)
            volts[update] = Flows.At(update, a, ofA) - Flows.At(update, b, ofB);
        var ohms = Flows.Ohms(a, ofA, b, ofB);
        for (var row = 0; row < volts.Length; row++)
            if (volts[row].High != 0)
                for (var column = 0; column < volts.Length; column++)
                    ohms -= volts[row] * Inverse[row, column] * volts[column];
        return Math.Max(0, (double)ohms);
    }

    /// <summary>Sends a current of one ampere from one node to another of the same piece, for <see cref="PortVolts"/>.</summary>
    public void TakePort(int from, int to)
    {
        _isPortChanged = _isChanged && Pieces.SectionOf(from) >= 0;
        if (!_isPortChanged)
        {
            _portFlow = _network.Blocks.Flow(from, to);
            return;
        }

        var count = Pieces.Updates.Length;
        Flows.TakePort(from, to);
        if (_portAmperes.Length < count)
            _portAmperes = new DoubleDouble[2 * count];
        Array.Clear(_portAmperes);
        for (var column = 0; column < count; column++)
            if (Flows.At(column, from) - Flows.At(column, to) is { High: not 0 } volts)
                for (var row = 0; row < count; row++)
                    _portAmperes[row] += Inverse[row, column] * volts;
    }

    /// <summary>Potential in volts of a node of the piece of that port, to a constant, while its current runs.</summary>
    public double PortVolts(int node)
    {
        if (!_isPortChanged)
            return (double)_network.Blocks.Volts(_portFlow, node);
        var volts = Flows.AtPort(node);
        for (var update = 0; update < Pieces.Updates.Length; update++)
            if (_portAmperes[update].High != 0)
                volts -= _portAmperes[update] * Flows.At(update, node);
        return (double)volts;
    }

    private void InvertUpdateMatrix()
    {
        var updates = Pieces.Updates;
        Inverse.Reset(updates.Length);
        for (var row = 0; row < updates.Length; row++)
        {
            for (var column = 0; column <= row; column++)
                Inverse.Set(row, column, Flows.Between(row, updates[column]));
            Inverse.Set(row, row, Inverse[row, row] + ((DoubleDouble)1 / updates[row].DeltaConductance));
        }

        if (!Inverse.Invert())
            throw new InvalidOperationException("The update of a network that hangs together is regular; this one is not.");
    }
}
