using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Proveout.Engine.Numerics;

/// <summary>What each update of a network does at each node of its ports. Reused from change to change by one thread.</summary>
/// <remarks>
/// Row by row of nodes, so that one load takes a node's values for four updates. They are rounded from double-double; a port's correction
/// comes with a bound of its rounding error, and where that is too large for the result the caller does the sum in double-double.
/// </remarks>
internal sealed class PortTransfers(Ports ports, ChangedNetwork network)
{
    private static readonly int Lanes = Vector256<double>.Count;

    // Each product of the sum is right to a few units in the last place of a double, 1.1e-16; so the result is right to 1e-10 or better.
    private const double LeastShare = 1e-5;
    private const double Negligible = 1e-10;
    private const double Rounding = 2.3e-16;

    private readonly int[] _piece = new int[ports.Nodes.Length];
    private readonly int[] _section = new int[ports.Nodes.Length];
    private readonly int[] _placedAt = new int[ports.Nodes.Length];
    private readonly int[] _filledAt = new int[ports.Nodes.Length];
    private int _turn;
    private double[] _values = [];
    private double[] _inverse = [];
    private double _negligibleVolts;
    private int _size;
    private int _stride;

    /// <summary>The piece of the network that a port's node is in, from 1; 0 when the change does not touch its island.</summary>
    public int PieceAt(int place)
    {
        if (_placedAt[place] != _turn)
            Place(place);
        return _piece[place];
    }

    /// <summary>True when two places, asked for their pieces before, lie in one section.</summary>
    public bool AreInOneSection(int a, int b) => _section[a] == _section[b];

    /// <summary>Takes the change that the network has now.</summary>
    public void Take()
    {
        _size = network.Pieces.Updates.Length;
        _stride = (_size + Lanes - 1) / Lanes * Lanes;
        if (_values.Length < ports.Nodes.Length * _stride)
            _values = new double[ports.Nodes.Length * _stride];
        _turn++;
        TakeInverse();
    }

    /// <summary>True when the updates alter a port within one section by less than its tenth digit; a quick bound that may say false of such a port.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool IsUntouched(int a, int b, double rootOfOhms)
    {
        if (_size == 0)
            return true;
        ref var atA = ref ValuesAt(a);
        ref var atB = ref ValuesAt(b);
        var largest = Vector256.Create(_negligibleVolts * rootOfOhms);
        for (var first = 0; first < _stride; first += Lanes)
        {
            var volts = Vector256.LoadUnsafe(ref atA, (nuint)first) - Vector256.LoadUnsafe(ref atB, (nuint)first);
            if (Vector256.GreaterThanAny(Vector256.Abs(volts), largest))
                return false;
        }

        return true;
    }

    /// <summary>What the updates leave of a port, in ohms; not a number when doubles cannot tell.</summary>
    /// <param name="a">The place of its one node.</param>
    /// <param name="b">The place of the other.</param>
    /// <param name="ohms">What the joined sections leave.</param>
    public double Correct(int a, int b, double ohms)
    {
        if (_size == 0)
            return ohms;
        Span<double> volts = stackalloc double[_stride];
        Span<double> terms = stackalloc double[_stride];
        SetVolts(a, b, volts, terms);
        var sum = 0.0;
        var magnitude = ohms;
        for (var first = 0; first < _stride; first += Lanes)
        {
            var currents = Vector256<double>.Zero;
            var bounds = Vector256<double>.Zero;
            for (var row = 0; row < _size; row++)
            {
                var inverse = Vector256.LoadUnsafe(ref _inverse[(row * _stride) + first]);
                currents += inverse * volts[row];
                bounds += Vector256.Abs(inverse) * (Math.Abs(volts[row]) + (Rounding * terms[row]));
            }

            sum += Vector256.Dot(currents, Vector256.Create<double>(volts[first..]));
            magnitude += Vector256.Dot(bounds, Vector256.Create<double>(terms[first..]));
        }

        return ohms - sum is var left && left >= LeastShare * magnitude ? left : double.NaN;
    }

    // The volts of each update between two places, and the sum of the magnitudes of the terms that each is a difference of.
    private void SetVolts(int a, int b, Span<double> volts, Span<double> terms)
    {
        ref var atA = ref ValuesAt(a);
        ref var atB = ref ValuesAt(b);
        for (var first = 0; first < _stride; first += Lanes)
        {
            var (here, there) = (Vector256.LoadUnsafe(ref atA, (nuint)first), Vector256.LoadUnsafe(ref atB, (nuint)first));
            (here - there).CopyTo(volts[first..]);
            (Vector256.Abs(here) + Vector256.Abs(there)).CopyTo(terms[first..]);
        }

        if (_section[a] == _section[b])
            return;
        for (var update = 0; update < _size; update++)
        {
            var level = DoubleDouble.Difference(network.Flows.LevelOf(update, _section[a]), network.Flows.LevelOf(update, _section[b]));
            volts[update] += level;
            terms[update] += Math.Abs(level);
        }
    }

    private void Place(int place)
    {
        _placedAt[place] = _turn;
        _section[place] = network.Pieces.SectionOf(ports.Nodes[place]);
        _piece[place] = _section[place] < 0 ? 0 : network.Pieces.AreSections ? network.Pieces.Sections[_section[place]].Piece : network.Pieces.Of(ports.Nodes[place]);
    }

    // Only the places that are asked for: a fault concerns few of them.
    private ref double ValuesAt(int place)
    {
        if (_filledAt[place] != _turn)
            FillValues(place);
        return ref _values[place * _stride];
    }

    private void FillValues(int place)
    {
        _filledAt[place] = _turn;
        var row = _values.AsSpan(place * _stride, _stride);
        var node = ports.Nodes[place];
        row.Clear();
        for (var update = 0; update < _size; update++)
            if (network.Flows.EndsIn(update, _section[place]) is var (entry, exit) && entry != exit)
                row[update] = (double)network.Flows.Volts(update, _section[place], node);
    }

    private void TakeInverse()
    {
        if (_inverse.Length < _stride * _stride)
            _inverse = new double[_stride * _stride];
        Array.Clear(_inverse);
        var largest = double.Epsilon;
        for (var row = 0; row < _size; row++)
            for (var column = 0; column < _size; column++)
            {
                var value = (double)network.Inverse[row, column];
                _inverse[(row * _stride) + column] = value;
                largest = Math.Max(largest, Math.Abs(value));
            }

        // The correction is at most the largest entry of the inverse times the square of the sum of all volts.
        _negligibleVolts = Math.Sqrt(Negligible / largest) / _size;
    }
}
