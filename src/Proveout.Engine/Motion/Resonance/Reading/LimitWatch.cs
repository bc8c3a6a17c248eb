namespace Proveout.Engine.Motion;

/// <summary>Watches one direction as it goes by: mean, variance, and flat tops at the end of the sensor's range.</summary>
internal sealed class LimitWatch
{
    // Two equal neighbours at the end may be chance; three that the signal jumped into are cut.
    private const int ShortestRun = 3;

    // The slow top of a wave in coarse steps is flat too, but it is entered step by step.
    private const double LeastJump = 3;

    // With fewer steps than this from end to end, flat ends say nothing.
    private const double LeastSteps = 32;

    private double _first;
    private double _previous = double.NaN;
    private double _sum;
    private double _squares;
    private double _high = double.NegativeInfinity;
    private double _low = double.PositiveInfinity;
    private double _step = double.PositiveInfinity;
    private double _entry;
    private int _run;
    private long _cutHigh;
    private long _cutLow;

    /// <summary>Samples so far.</summary>
    public long Count { get; private set; }

    /// <summary>Their mean.</summary>
    public double Mean => _first + (_sum / Count);

    /// <summary>Their mean square about the mean.</summary>
    public double Variance => Math.Max(0, (_squares / Count) - (_sum / Count * (_sum / Count)));

    /// <summary>Smallest change between neighbours; infinite when there was none.</summary>
    public double Step => _step;

    /// <summary>Steps from the lowest to the highest; 0 when nothing changed.</summary>
    public double StepsAcross => double.IsFinite(_step) ? (_high - _low) / _step : 0;

    /// <summary>Share of the samples that stand at an end of the range.</summary>
    public double CutShare => StepsAcross < LeastSteps ? 0 : (_cutHigh + _cutLow) / (double)Count;

    /// <summary>Takes samples.</summary>
    public void Add(ReadOnlySpan<double> samples)
    {
        if (Count == 0 && samples.Length > 0)
            _first = samples[0];
        foreach (var sample in samples)
        {
            var shifted = sample - _first;
            _sum += shifted;
            _squares += shifted * shifted;
            var change = Math.Abs(sample - _previous);
            if (change > 0 && change < _step)
                _step = change;
            if (sample >= _high || sample <= _low)
                AtEnd(sample, change);
            _previous = sample;
        }

        Count += samples.Length;
    }

    private void AtEnd(double sample, double change)
    {
        _cutHigh = sample > _high ? 0 : _cutHigh;
        _cutLow = sample < _low ? 0 : _cutLow;
        (_high, _low) = (Math.Max(_high, sample), Math.Min(_low, sample));
        if (change == 0)
            _run++;
        else
            (_run, _entry) = (1, change);
        if (_run < ShortestRun || !(_entry > LeastJump * _step))
            return;
        var counted = _run == ShortestRun ? ShortestRun : 1;
        if (sample == _high)
            _cutHigh += counted;
        else
            _cutLow += counted;
    }
}
