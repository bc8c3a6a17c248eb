using MathNet.Numerics.LinearAlgebra;

namespace Proveout.Engine.Tests.Electrical;

/// <summary>Readings of a network of resistors by loop currents (Maxwell), with a dense Cholesky solver of MathNet.Numerics.</summary>
/// <remarks>
/// The engine solves for potentials; this solves for the currents round the loops, and shares nothing with it. Over twelve decades of
/// resistance the nodal matrix is too ill-conditioned for sixteen digits: milliohm joints swamp megohm insulation. The loop matrix is not,
/// when the tree is the one of least resistance: each loop then holds one chord that outweighs every branch of its own, so the matrix scaled
/// to a unit diagonal is well-conditioned (Demmel, On floating point errors in Cholesky, LAPACK working note 14). The reading is taken as
/// the power that one ampere spends, a sum of positive terms that is least at the true currents (Thomson's principle; Doyle and Snell,
/// Random Walks and Electric Networks, 1.3.5), so an error of the currents enters only by its square.
/// </remarks>
internal sealed class LoopAnalysis
{
    private readonly Resistor[] _resistors;
    private readonly SpanningForest _forest;
    private readonly (int Resistor, int Sign)[][] _loops;
    private readonly List<(int Loop, int Sign)>[] _loopsThrough;
    private readonly double[][] _inverse;
    private readonly double[] _current;

    public LoopAnalysis(int nodeCount, Resistor[] resistors)
    {
        _resistors = resistors;
        _forest = new SpanningForest(nodeCount, resistors);
        _loops = [.. _forest.Chords.Select(chord => _forest.Path(resistors[chord].B, resistors[chord].A).Append((chord, 1)).ToArray())];
        _loopsThrough = [.. resistors.Select(_ => new List<(int, int)>())];
        for (var loop = 0; loop < _loops.Length; loop++)
            foreach (var (resistor, sign) in _loops[loop])
                _loopsThrough[resistor].Add((loop, sign));
        _inverse = Inverse();
        _current = new double[resistors.Length];
    }

    /// <summary>Resistance between two nodes in ohms; infinite when they do not hang together.</summary>
    public double Reading(int a, int b)
    {
        if (!_forest.AreTogether(a, b))
            return double.PositiveInfinity;
        List<int> carrying = [];
        var path = _forest.Path(a, b);
        AddCurrent(carrying, path, 1);
        var loopVolts = new double[_loops.Length];
        foreach (var (resistor, sign) in path)
            foreach (var (loop, loopSign) in _loopsThrough[resistor])
                loopVolts[loop] += sign * loopSign * _resistors[resistor].Ohms;
        for (var loop = 0; loop < _loops.Length; loop++)
            if (LoopCurrent(loop, loopVolts) is not 0 and var amperes)
                AddCurrent(carrying, _loops[loop], -amperes);
        var watts = 0.0;
        foreach (var resistor in carrying)
        {
            watts += _current[resistor] * _current[resistor] * _resistors[resistor].Ohms;
            _current[resistor] = 0;
        }

        return watts;
    }

    private double LoopCurrent(int loop, double[] loopVolts)
    {
        var row = _inverse[loop];
        var sum = 0.0;
        for (var other = 0; other < row.Length; other++)
            sum += row[other] * loopVolts[other];
        return sum;
    }

    // A resistor may be listed twice; the second time its current is zero again and adds nothing.
    private void AddCurrent(List<int> carrying, IEnumerable<(int Resistor, int Sign)> path, double amperes)
    {
        foreach (var (resistor, sign) in path)
        {
            if (_current[resistor] == 0)
                carrying.Add(resistor);
            _current[resistor] += sign * amperes;
        }
    }

    private double[][] Inverse()
    {
        if (_loops.Length == 0)
            return [];
        var matrix = Matrix<double>.Build.Dense(_loops.Length, _loops.Length);
        for (var loop = 0; loop < _loops.Length; loop++)
            foreach (var (resistor, sign) in _loops[loop])
                foreach (var (other, otherSign) in _loopsThrough[resistor])
                    matrix[loop, other] += sign * otherSign * _resistors[resistor].Ohms;
        var scale = matrix.Diagonal().Map(ohms => 1 / Math.Sqrt(ohms));
        var scaled = Matrix<double>.Build.Dense(_loops.Length, _loops.Length, (row, column) => scale[row] * matrix[row, column] * scale[column]);
        var inverse = scaled.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(_loops.Length));
        return Matrix<double>.Build.Dense(_loops.Length, _loops.Length, (row, column) => scale[row] * inverse[row, column] * scale[column]).ToRowArrays();
    }
}
