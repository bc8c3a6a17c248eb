namespace Proveout.Engine.Numerics;

/// <summary>A network with a few of its resistors changed, without factoring it anew. Reused from change to change by one thread.</summary>
/// <remarks>
/// Sherman-Morrison-Woodbury: with the changes U diag(d) Uᵀ, the matrix Z of transfer resistances becomes Z - ZU (diag(1/d) + UᵀZU)⁻¹ UᵀZ
/// (Golub and Van Loan, Matrix Computations, 2.1.4). The small matrix is formed and inverted in double-double, for opening a joint
/// subtracts nearly equal numbers. Pieces that come off get an anchor of their own and pieces that join lose all but one, so that the
/// small matrix is regular whatever the change; which pieces there are is found by walking the graph and not by a numerical threshold.
/// </remarks>
internal sealed class ChangedNetwork
{
    private const int Ground = -1;

    // Where a change leaves less than this share of a reading, the subtraction that says so is done in double-double.
    private const double Cancellation = 1e-4;

    private readonly ResistorNetwork _network;
    private readonly ChangedPieces _pieces;
    private readonly List<(int A, int B)> _ports = [];
    private readonly List<double> _deltas = [];
    private readonly List<double[]> _differences = [];
    private DoubleDouble[,] _exactInverse = new DoubleDouble[0, 0];
    private double[] _inverse = [];

    /// <summary>Prepares to change a network.</summary>
    public ChangedNetwork(ResistorNetwork network)
    {
        _network = network;
        _pieces = new ChangedPieces(network);
    }

    /// <summary>Number of pieces that <see cref="PieceOf"/> tells apart.</summary>
    public int PieceCount => _network.Islands.Count + _pieces.Count;

    /// <summary>Applies changes to the network as it was, in place of those applied before.</summary>
    /// <param name="changes">What changes; each resistor at most once; at least one change.</param>
    /// <param name="nodes">Nodes that will be asked about.</param>
    public void Apply(IReadOnlyList<EdgeChange> changes, ReadOnlySpan<int> nodes)
    {
        _pieces.Find(changes);
        _ports.Clear();
        _deltas.Clear();
        foreach (var change in changes)
            AddUpdate(change.A, change.B, change.DeltaConductance);
        UpdateAnchors();
        for (var index = 0; index < _ports.Count; index++)
            FillDifferences(index, nodes);
        _exactInverse = SmallInverse.Invert(UpdateMatrix())
            ?? throw new InvalidOperationException("The update of an anchored network is regular; this one is not.");
        _inverse = [.. _exactInverse.Cast<DoubleDouble>().Select(value => (double)value)];
    }

    /// <summary>True when the change may alter what stands between this node and others.</summary>
    public bool Touches(int node) => _pieces.Of(node) != 0;

    /// <summary>Number of the piece that a node is now in; two nodes hang together when it is the same.</summary>
    public int PieceOf(int node) =>
        _pieces.Of(node) is > 0 and var piece ? _network.Islands.Count + piece - 1 : _network.Islands.Of(node);

    /// <summary>Resistance between two of the nodes in ohms after the change; infinite when they do not hang together.</summary>
    /// <param name="a">First node.</param>
    /// <param name="b">Second node.</param>
    /// <param name="anchoredBefore">What <see cref="ResistorNetwork.AnchoredResistance"/> says of the two.</param>
    public double Resistance(int a, int b, double anchoredBefore)
    {
        if (PieceOf(a) != PieceOf(b))
            return double.PositiveInfinity;
        if (!Touches(a))
            return anchoredBefore;
        var resistance = anchoredBefore - Correction(a, b);
        return resistance >= Cancellation * anchoredBefore ? resistance : ExactResistance(a, b);
    }

    private double Correction(int a, int b)
    {
        var size = _ports.Count;
        Span<double> transfer = stackalloc double[size];
        for (var index = 0; index < size; index++)
            transfer[index] = _differences[index][a] - _differences[index][b];
        var sum = 0.0;
        for (var row = 0; row < size; row++)
        {
            if (transfer[row] == 0)
                continue;
            var rowSum = 0.0;
            var rowOfInverse = _inverse.AsSpan(row * size, size);
            for (var column = 0; column < size; column++)
                rowSum += rowOfInverse[column] * transfer[column];
            sum += transfer[row] * rowSum;
        }

        return sum;
    }

    private double ExactResistance(int a, int b)
    {
        var size = _ports.Count;
        Span<DoubleDouble> transfer = stackalloc DoubleDouble[size];
        for (var index = 0; index < size; index++)
            transfer[index] = Transfer(_ports[index], (a, b));
        var resistance = _network.AnchoredResistance(a, b);
        for (var row = 0; row < size; row++)
            for (var column = 0; column < size; column++)
                resistance -= transfer[row] * _exactInverse[row, column] * transfer[column];
        return Math.Max(0, (double)resistance);
    }

    private void AddUpdate(int a, int b, double delta)
    {
        _ports.Add((a, b));
        _deltas.Add(delta);
        if (_differences.Count < _ports.Count)
            _differences.Add(new double[_network.NodeCount]);
    }

    private void UpdateAnchors()
    {
        Span<bool> anchored = stackalloc bool[_pieces.Count + 1];
        foreach (var island in _pieces.TouchedIslands)
        {
            var anchor = _network.AnchorOf(island);
            if (anchored[_pieces.Of(anchor)])
                AddUpdate(anchor, Ground, -ResistorNetwork.AnchorConductance);
            anchored[_pieces.Of(anchor)] = true;
        }

        for (var piece = 1; piece <= _pieces.Count; piece++)
            if (!anchored[piece])
                AddUpdate(_pieces.FirstOf(piece), Ground, ResistorNetwork.AnchorConductance);
    }

    // Potentials for one ampere in at A and out at B; all lie between those of A and B, so rounding them to double loses nothing that matters.
    private void FillDifferences(int update, ReadOnlySpan<int> nodes)
    {
        var (a, b) = _ports[update];
        var differences = _differences[update];
        var islandOfA = _network.Islands.Of(a);
        var islandOfB = b == Ground ? Ground : _network.Islands.Of(b);
        var columnOfA = _network.Column(a);
        var columnOfB = b == Ground ? null : _network.Column(b);
        foreach (var node in nodes)
        {
            var island = _network.Islands.Of(node);
            var index = _network.IndexInIsland(node);
            var fromA = island == islandOfA ? columnOfA[index] : DoubleDouble.Zero;
            var fromB = island == islandOfB ? columnOfB![index] : DoubleDouble.Zero;
            differences[node] = DoubleDouble.Difference(fromA, fromB);
        }
    }

    private DoubleDouble[,] UpdateMatrix()
    {
        var matrix = new DoubleDouble[_ports.Count, _ports.Count];
        for (var row = 0; row < _ports.Count; row++)
        {
            for (var column = 0; column <= row; column++)
                matrix[row, column] = matrix[column, row] = Transfer(_ports[row], _ports[column]);
            matrix[row, row] += (DoubleDouble)1 / _deltas[row];
        }

        return matrix;
    }

    private DoubleDouble Transfer((int A, int B) one, (int A, int B) two) =>
        Transfer(one.A, two.A) - Transfer(one.A, two.B) - Transfer(one.B, two.A) + Transfer(one.B, two.B);

    private DoubleDouble Transfer(int a, int b) => a == Ground || b == Ground ? DoubleDouble.Zero : _network.Transfer(a, b);
}
