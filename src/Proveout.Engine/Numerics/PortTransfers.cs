using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Proveout.Engine.Numerics;

/// <summary>What each update of a network does at each node of its ports. Reused from change to change by one thread.</summary>
/// <remarks>
/// Row by row of nodes, so that one load takes a node's values for four updates. They are rounded from double-double; a port's correction
/// comes with a bound of its rounding error, and where that is too large for the result the caller does the sum in double-double.
/// </remarks>
internal sealed class PortTransfers(Ports ports, UpdatePotentials potentials)
{
    private static readonly int Lanes = Vector256<double>.Count;

    // Each product of the sum is right to a few units in the last place of a double, 1.1e-16; so the result is right to 1e-10 or better.
    private const double LeastShare = 1e-5;
    private const double Negligible = 1e-10;
    private const double Rounding = 2.3e-16;

    private readonly int[] _piece = new int[ports.Nodes.Length];
    private readonly int[] _filled = new int[ports.Nodes.Length];
    private ChangedPieces? _pieces;
    private int _turn;
    private double[] _values = [];
    private double[] _inverse = [];
    private double _negligibleVolts;
    private int _size;
    private int _stride;

    /// <summary>The piece of the network that a port's node is in, from 1; 0 when the change does not touch its island.</summary>
    public int PieceAt(int place)
    {
        if (_filled[place] != _turn)
            FillPlace(place);
        return _piece[place];
    }

    /// <summary>Takes the pieces of a change and the inverse of the matrix of its updates.</summary>
    public void Fill(ChangedPieces pieces, SmallInverse inverse)
    {
        _size = potentials.Count;
        _stride = (_size + Lanes - 1) / Lanes * Lanes;
        if (_values.Length < ports.Nodes.Length * _stride)
            _values = new double[ports.Nodes.Length * _stride];
        _pieces = pieces;
        _turn++;
        FillInverse(inverse);
    }

    /// <summary>True when the updates alter a port by less than its tenth digit; a quick bound that may say false of such a port.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool IsUntouched(int a, int b, double rootOfAnchoredOhms)
    {
        var largest = Vector256.Create(_negligibleVolts * rootOfAnchoredOhms);
        ref var atA = ref _values[a * _stride];
        ref var atB = ref _values[b * _stride];
        for (var first = 0; first < _stride; first += Lanes)
        {
            var volts = Vector256.LoadUnsafe(ref atA, (nuint)first) - Vector256.LoadUnsafe(ref atB, (nuint)first);
            if (Vector256.GreaterThanAny(Vector256.Abs(volts), largest))
                return false;
        }

        return true;
    }

    /// <summary>What the updates leave of a port, in ohms; not a number when doubles cannot tell.</summary>
    public double Correct(int a, int b, double anchoredOhms)
    {
        var atA = _values.AsSpan(a * _stride, _stride);
        var atB = _values.AsSpan(b * _stride, _stride);
        var sum = 0.0;
        var magnitude = anchoredOhms;
        for (var first = 0; first < _stride; first += Lanes)
        {
            var currents = Vector256<double>.Zero;
            var bounds = Vector256<double>.Zero;
            for (var row = 0; row < _size; row++)
            {
                var volts = atA[row] - atB[row];
                var bound = Math.Abs(volts) + (Rounding * (Math.Abs(atA[row]) + Math.Abs(atB[row])));
                var inverse = Vector256.LoadUnsafe(ref _inverse[(row * _stride) + first]);
                currents += inverse * volts;
                bounds += Vector256.Abs(inverse) * bound;
            }

            var here = Vector256.Create<double>(atA[first..]);
            var there = Vector256.Create<double>(atB[first..]);
            sum += Vector256.Dot(currents, here - there);
            magnitude += Vector256.Dot(bounds, Vector256.Abs(here) + Vector256.Abs(there));
        }

        return anchoredOhms - sum is var ohms && ohms >= LeastShare * magnitude ? ohms : double.NaN;
    }

    // Only the places that are asked for: a fault concerns few of them.
    private void FillPlace(int place)
    {
        _filled[place] = _turn;
        _piece[place] = _pieces!.Of(ports.Nodes[place]);
        if (_piece[place] == 0)
            return;
        var island = ports.Islands[place];
        var member = ports.IndicesInIsland[place];
        var row = _values.AsSpan(place * _stride, _stride);
        row.Clear();
        potentials.At(island, member, row);
    }

    private void FillInverse(SmallInverse inverse)
    {
        if (_inverse.Length < _stride * _stride)
            _inverse = new double[_stride * _stride];
        Array.Clear(_inverse);
        var largest = double.Epsilon;
        for (var row = 0; row < _size; row++)
            for (var column = 0; column < _size; column++)
            {
                var value = (double)inverse[row, column];
                _inverse[(row * _stride) + column] = value;
                largest = Math.Max(largest, Math.Abs(value));
            }

        // The correction is at most the largest entry of the inverse times the square of the sum of all volts.
        _negligibleVolts = Math.Sqrt(Negligible / largest) / _size;
    }
}
