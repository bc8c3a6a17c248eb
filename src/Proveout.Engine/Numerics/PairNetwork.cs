namespace Proveout.Engine.Numerics;

/// <summary>A network with a few of its resistors changed, asked for one port at a time. Reused from change to change by one thread.</summary>
/// <remarks>
/// The same update as <see cref="ChangedNetwork"/> for the other kind of question: many changes and few ports each. Nothing is done for ports that are not asked for.
/// </remarks>
internal sealed class PairNetwork
{
    private readonly ResistorNetwork _network;
    private readonly ChangedPieces _pieces;
    private readonly SectionFlows _flows;
    private readonly SmallSystem _system = new();
    private bool _isChanged;

    /// <summary>Prepares to change a network.</summary>
    public PairNetwork(ResistorNetwork network)
    {
        _network = network;
        _pieces = new ChangedPieces(network);
        _flows = new SectionFlows(_pieces, network, network);
    }

    /// <summary>The pieces of the islands that the change touches.</summary>
    public ChangedPieces Pieces => _pieces;

    /// <summary>True when the change neither parts nor joins pieces.</summary>
    public bool HasPiecesAsBefore => !_isChanged || _pieces.AreAsBefore;

    /// <summary>Applies changes to the network as it was, in place of those applied before.</summary>
    /// <param name="changes">What changes; each resistor at most once; none at all leaves the network as it was.</param>
    public void Apply(List<EdgeChange> changes)
    {
        _isChanged = changes.Count > 0;
        if (!_isChanged)
            return;
        _pieces.Find(changes);
        _flows.Take();
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
        if (!_isChanged || _pieces.SectionOf(a) < 0)
            return _network.Resistance(a, b);
        var ohms = _flows.Ohms(a, b);
        Span<DoubleDouble> across = stackalloc DoubleDouble[_pieces.Updates.Length];
        var isAcross = false;
        for (var update = 0; update < across.Length; update++)
        {
            across[update] = _flows.At(update, a) - _flows.At(update, b);
            isAcross |= across[update].High != 0;
        }

        if (!isAcross)
            return Math.Max(0, (double)ohms);
        Span<DoubleDouble> currents = stackalloc DoubleDouble[across.Length];
        _system.Solve(across, currents);
        for (var index = 0; index < across.Length; index++)
            ohms -= across[index] * currents[index];
        return Math.Max(0, (double)ohms);
    }

    private void FactorUpdateMatrix()
    {
        var updates = _pieces.Updates;
        _system.Reset(updates.Length);
        for (var row = 0; row < updates.Length; row++)
            for (var column = 0; column <= row; column++)
            {
                var transfer = _flows.Between(row, updates[column]);
                _system.Set(row, column, row == column ? transfer + ((DoubleDouble)1 / updates[row].DeltaConductance) : transfer);
            }

        if (!_system.Factor())
            throw new InvalidOperationException("The update of a network that hangs together is regular; this one is not.");
    }
}
