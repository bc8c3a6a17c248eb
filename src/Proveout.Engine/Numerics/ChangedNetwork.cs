namespace Proveout.Engine.Numerics;

/// <summary>A network with a few of its resistors changed, without factoring it anew.</summary>
/// <remarks>
/// Sherman-Morrison-Woodbury: with the changes U diag(d) Uᵀ, the matrix Z of transfer resistances becomes Z - ZU (diag(1/d) + UᵀZU)⁻¹ UᵀZ
/// (Golub and Van Loan, Matrix Computations, 2.1.4). The small matrix is formed and inverted in double-double, for opening a joint
/// subtracts nearly equal numbers. Pieces that come off get an anchor of their own and pieces that join lose all but one, so that the
/// small matrix is regular whatever the change; which pieces there are is found by walking the graph and not by a numerical threshold.
/// </remarks>
internal sealed class ChangedNetwork
{
    private const int Ground = -1;

    private readonly ResistorNetwork _network;
    private readonly ChangedPieces _pieces;
    private readonly (int A, int B)[] _ports;
    private readonly double[][] _differences;
    private readonly double[,] _inverse;

    /// <summary>Applies changes to a network.</summary>
    /// <param name="network">The network as it was.</param>
    /// <param name="changes">What changes; each resistor at most once; at least one change.</param>
    public ChangedNetwork(ResistorNetwork network, IReadOnlyList<EdgeChange> changes)
    {
        _network = network;
        _pieces = new ChangedPieces(network, changes);
        var updates = changes.Select(change => (Port: (change.A, change.B), change.DeltaConductance)).Concat(AnchorUpdates()).ToArray();
        _ports = [.. updates.Select(update => update.Port)];
        _differences = [.. _ports.Select(Differences)];
        _inverse = SmallInverse.Invert(UpdateMatrix([.. updates.Select(update => update.DeltaConductance)]))
            ?? throw new InvalidOperationException("The update of an anchored network is regular; this one is not.");
    }

    /// <summary>True when the change may alter what stands between this node and others.</summary>
    public bool Touches(int node) => _pieces.Of(node) != 0;

    /// <summary>Resistance between two nodes in ohms after the change; infinite when they no longer hang together.</summary>
    /// <param name="a">First node.</param>
    /// <param name="b">Second node.</param>
    /// <param name="anchoredBefore">What <see cref="ResistorNetwork.AnchoredResistance"/> says of the two.</param>
    public double Resistance(int a, int b, double anchoredBefore)
    {
        if (_pieces.Of(a) != _pieces.Of(b) || (!Touches(a) && _network.Islands.Of(a) != _network.Islands.Of(b)))
            return double.PositiveInfinity;
        if (!Touches(a))
            return anchoredBefore;

        var size = _ports.Length;
        Span<double> transfer = stackalloc double[size];
        for (var index = 0; index < size; index++)
            transfer[index] = _differences[index][a] - _differences[index][b];
        var sum = 0.0;
        for (var row = 0; row < size; row++)
        {
            if (transfer[row] == 0)
                continue;
            var rowSum = 0.0;
            for (var column = 0; column < size; column++)
                rowSum += _inverse[row, column] * transfer[column];
            sum += transfer[row] * rowSum;
        }

        return Math.Max(0, anchoredBefore - sum);
    }

    private IEnumerable<((int A, int B) Port, double DeltaConductance)> AnchorUpdates()
    {
        var anchors = _pieces.TouchedIslands.Select(_network.AnchorOf).ToLookup(_pieces.Of);
        for (var piece = 1; piece <= _pieces.Members.Count; piece++)
        {
            if (!anchors.Contains(piece))
                yield return ((_pieces.Members[piece - 1][0], Ground), ResistorNetwork.AnchorConductance);
            foreach (var surplus in anchors[piece].Skip(1))
                yield return ((surplus, Ground), -ResistorNetwork.AnchorConductance);
        }
    }

    // Potentials for one ampere in at A and out at B; all lie between those of A and B, so rounding them to double loses nothing that matters.
    private double[] Differences((int A, int B) port)
    {
        var differences = new double[_network.NodeCount];
        var islandOfA = _network.Islands.Of(port.A);
        var sameIsland = port.B != Ground && _network.Islands.Of(port.B) == islandOfA;
        var columnOfA = _network.Column(port.A);
        var columnOfB = port.B == Ground ? null : _network.Column(port.B);
        var members = _network.Islands.Members(islandOfA);
        for (var index = 0; index < members.Length; index++)
            differences[members[index]] = (double)(sameIsland ? columnOfA[index] - columnOfB![index] : columnOfA[index]);
        if (columnOfB is null || sameIsland)
            return differences;

        members = _network.Islands.Members(_network.Islands.Of(port.B));
        for (var index = 0; index < members.Length; index++)
            differences[members[index]] = -(double)columnOfB[index];
        return differences;
    }

    private DoubleDouble[,] UpdateMatrix(double[] deltas)
    {
        var matrix = new DoubleDouble[_ports.Length, _ports.Length];
        for (var row = 0; row < _ports.Length; row++)
        {
            for (var column = 0; column <= row; column++)
                matrix[row, column] = matrix[column, row] = Transfer(_ports[row], _ports[column]);
            matrix[row, row] += (DoubleDouble)1 / deltas[row];
        }

        return matrix;
    }

    private DoubleDouble Transfer((int A, int B) one, (int A, int B) two) =>
        Transfer(one.A, two.A) - Transfer(one.A, two.B) - Transfer(one.B, two.A) + Transfer(one.B, two.B);

    private DoubleDouble Transfer(int a, int b) => a == Ground || b == Ground ? DoubleDouble.Zero : _network.Transfer(a, b);
}
