namespace Proveout.Engine.Motion;

/// <summary>Samples on their way from rows to averages; holds no more than a segment, whatever the length of the recording.</summary>
internal sealed class SignalStream
{
    private const int Block = 4096;

    private readonly SampleClock _clock;
    private readonly double[][] _samples;
    private readonly EvenGrid? _grid;
    private readonly Action<double[]> _take;
    private int _filled;
    private double _previous = double.NaN;
    private double _between;
    private double _squares;
    private long _intervals;
    private long _run;

    /// <param name="clock">How the recording is sampled.</param>
    /// <param name="secondsByUnit">One of the unit of its times in s.</param>
    /// <param name="directions">How many directions.</param>
    /// <param name="segmentLength">Samples of a segment.</param>
    public SignalStream(SampleClock clock, double secondsByUnit, int directions, int segmentLength)
    {
        _clock = clock;
        _take = values => Take(values);
        _samples = [.. Enumerable.Range(0, directions).Select(_ => new double[Block])];
        Averages = [.. Enumerable.Range(0, directions).Select(_ => new WelchAverage(segmentLength))];
        Watches = [.. Enumerable.Range(0, directions).Select(_ => new LimitWatch())];
        Catcher = new RingCatcher(1 / (clock.Interval * secondsByUnit), directions);
        _grid = clock.IsEven ? null : new EvenGrid(clock.Interval, directions);
    }

    public IReadOnlyList<WelchAverage> Averages { get; }

    public IReadOnlyList<LimitWatch> Watches { get; }

    public RingCatcher Catcher { get; }

    /// <summary>Samples on the even grid.</summary>
    public long Samples { get; private set; }

    /// <summary>Longest stretch without a break, in samples.</summary>
    public long LongestRun { get; private set; }

    /// <summary>Times that the recording breaks off and goes on later, with the time that is missing.</summary>
    public (long Count, double Missing, int FirstLine) Gaps { get; private set; }

    /// <summary>Times that the time goes back.</summary>
    public (long Count, int FirstLine) Resets { get; private set; }

    /// <summary>Rows that repeat the time of the row before.</summary>
    public (long Count, int FirstLine) Repeats { get; private set; }

    /// <summary>Mean interval of everything that was used.</summary>
    public double Interval => _clock.IsEven && _intervals > 0 ? _between / _intervals : _clock.Interval;

    /// <summary>Scatter of the intervals as a share of their mean, without what the steps of time explain.</summary>
    public double Scatter => _intervals == 0 ? 0
        : SampleClock.Unexplained(Math.Sqrt(Math.Max(0, (_squares / _intervals) - ((Interval - _clock.Interval) * (Interval - _clock.Interval)))), _clock.Quantum) / Interval;

    /// <summary>Takes a row.</summary>
    public void Add(double time, ReadOnlySpan<double> values, int line)
    {
        var between = time - _previous;
        if (_clock.Repeats(between))
        {
            Repeats = (Repeats.Count + 1, Repeats.Count == 0 ? line : Repeats.FirstLine);
            return;
        }

        if (_clock.Continues(between))
        {
            (_between, _intervals) = (_between + between, _intervals + 1);
            _squares += (between - _clock.Interval) * (between - _clock.Interval);
        }
        else if (!double.IsNaN(_previous))
        {
            NoteBreak(between, line);
        }

        _previous = time;
        if (_grid is null)
            Take(values);
        else
            _grid.Add(time, values, _take);
    }

    /// <summary>Hands on what is still held.</summary>
    public void Finish()
    {
        Flush();
        Catcher.Break();
        LongestRun = Math.Max(LongestRun, _run);
    }

    private void NoteBreak(double between, int line)
    {
        if (between < 0)
            Resets = (Resets.Count + 1, Resets.Count == 0 ? line : Resets.FirstLine);
        else
            Gaps = (Gaps.Count + 1, Gaps.Missing + Math.Max(0, between - _clock.Interval), Gaps.Count == 0 ? line : Gaps.FirstLine);
        Flush();
        foreach (var average in Averages)
            average.Break();
        Catcher.Break();
        _grid?.Break();
        (LongestRun, _run) = (Math.Max(LongestRun, _run), 0);
    }

    private void Take(ReadOnlySpan<double> values)
    {
        for (var direction = 0; direction < _samples.Length; direction++)
            _samples[direction][_filled] = values[direction];
        if (++_filled == Block)
            Flush();
    }

    private void Flush()
    {
        for (var direction = 0; direction < _samples.Length; direction++)
        {
            var samples = _samples[direction].AsSpan(0, _filled);
            Averages[direction].Add(samples);
            Watches[direction].Add(samples);
        }

        Catcher.Add(_samples, _filled);
        (Samples, _run, _filled) = (Samples + _filled, _run + _filled, 0);
    }
}
