namespace Proveout.Engine.Motion;

/// <summary>Puts unevenly timed samples of several directions on an even grid: a cubic through the four nearest (Lagrange).</summary>
/// <param name="interval">Distance of the grid's points.</param>
/// <param name="directions">How many directions.</param>
internal sealed class EvenGrid(double interval, int directions)
{
    private readonly double[] _times = new double[4];
    private readonly double[][] _values = [new double[directions], new double[directions], new double[directions], new double[directions]];
    private readonly double[] _at = new double[directions];
    private int _filled;
    private double _start;
    private long _point;

    /// <summary>What follows does not continue the last samples.</summary>
    public void Break() => _filled = 0;

    /// <summary>Takes a sample and gives the points of the grid that it makes known.</summary>
    public void Add(double time, ReadOnlySpan<double> values, Action<double[]> point)
    {
        if (_filled == 0)
            (_start, _point) = (time, 0);
        if (_filled == 4)
        {
            _times.AsSpan(1).CopyTo(_times);
            var oldest = _values[0];
            Array.Copy(_values, 1, _values, 0, 3);
            (_values[3], _filled) = (oldest, 3);
        }

        _times[_filled] = time;
        values[..directions].CopyTo(_values[_filled]);
        _filled++;
        if (_filled < 4)
            return;
        for (double at; (at = _start + (_point * interval)) <= _times[2]; _point++)
            point(At(at));
    }

    private double[] At(double time)
    {
        Span<double> weights = stackalloc double[4];
        for (var one = 0; one < 4; one++)
        {
            weights[one] = 1;
            for (var other = 0; other < 4; other++)
                if (other != one)
                    weights[one] *= (time - _times[other]) / (_times[one] - _times[other]);
        }

        // One array for all points: who gets it copies it.
        var values = _at;
        Array.Clear(values);
        for (var direction = 0; direction < directions; direction++)
            for (var one = 0; one < 4; one++)
                values[direction] += weights[one] * _values[one][direction];
        return values;
    }
}
