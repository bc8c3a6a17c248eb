namespace Proveout.Engine.Motion;

/// <summary>
/// Averages the power spectra of overlapping segments as the samples come (Welch 1967): Hann window of the periodic kind, half overlap, the mean of each segment taken off, density scaling.
/// Holds one segment, however long the recording is. Gives what SciPy's <c>welch</c> gives with its default settings and the same segment length.
/// </summary>
internal sealed class WelchAverage
{
    private readonly RealTransform _transform;
    private readonly double[] _window;
    private readonly double[] _segment;
    private readonly double[] _weighted;
    private readonly double[] _squares;
    private readonly double[] _sum;
    private readonly double[] _highest;
    private readonly double _windowSquares;
    private int _filled;
    private double _windowed;

    /// <param name="length">Samples of a segment, a power of two.</param>
    public WelchAverage(int length)
    {
        _transform = new RealTransform(length);
        _window = [.. Enumerable.Range(0, length).Select(index => 0.5 - (0.5 * Math.Cos(2 * Math.PI * index / length)))];
        _windowSquares = _window.Sum(weight => weight * weight);
        (_segment, _weighted) = (new double[length], new double[length]);
        (_squares, _sum, _highest) = (new double[(length / 2) + 1], new double[(length / 2) + 1], new double[(length / 2) + 1]);
    }

    /// <summary>Segments so far.</summary>
    public int Segments { get; private set; }

    /// <summary>Mean square of the windowed segments, in the square of the samples' unit: what the density sums up to (Parseval).</summary>
    public double WindowedMeanSquare => _windowed / Segments;

    /// <summary>Takes samples that follow the last ones.</summary>
    public void Add(ReadOnlySpan<double> samples)
    {
        while (samples.Length > 0)
        {
            var taken = Math.Min(samples.Length, _segment.Length - _filled);
            samples[..taken].CopyTo(_segment.AsSpan(_filled));
            _filled += taken;
            samples = samples[taken..];
            if (_filled < _segment.Length)
                continue;
            Take();
            var half = _segment.Length / 2;
            _segment.AsSpan(half).CopyTo(_segment);
            _filled = half;
        }
    }

    /// <summary>What follows does not continue the last samples.</summary>
    public void Break() => _filled = 0;

    /// <summary>The average.</summary>
    /// <param name="rate">Samples a second.</param>
    /// <param name="unit">One of the samples' unit in m/s².</param>
    public PowerDensity Result(double rate, double unit)
    {
        var scale = unit * unit / (rate * _windowSquares);
        double Scaled(double value, int bin) => value * scale * (bin == 0 || bin == _sum.Length - 1 ? 1 : 2);
        return new PowerDensity(
            rate / _segment.Length, [.. _sum.Select((value, bin) => Scaled(value / Segments, bin))], [.. _highest.Select(Scaled)], Segments);
    }

    private void Take()
    {
        var mean = 0.0;
        foreach (var sample in _segment)
            mean += sample;
        mean /= _segment.Length;
        var squares = 0.0;
        for (var index = 0; index < _segment.Length; index++)
        {
            var weighted = _window[index] * (_segment[index] - mean);
            _weighted[index] = weighted;
            squares += weighted * weighted;
        }

        _windowed += squares / _windowSquares;
        _transform.Squares(_weighted, _squares);
        for (var bin = 0; bin < _squares.Length; bin++)
        {
            _sum[bin] += _squares[bin];
            _highest[bin] = Math.Max(_highest[bin], _squares[bin]);
        }

        Segments++;
    }
}
