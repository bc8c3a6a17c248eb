namespace Proveout.Engine.Heat;

/// <summary>Follows the time from row to row: how far rows lie apart as a rule, and the widest gaps.</summary>
internal sealed class LogSteps
{
    private const int MostGaps = 64;

    // Eight classes an octave, from a microsecond on.
    private const int Classes = 400;
    private const double Shortest = 1e-6;

    // Rows that are left out now and then are no gap; nor are ten steps of a quick log.
    private const double StepsOfAGap = 10;
    private const double ShortestGapSeconds = 3;

    private readonly long[] _counts = new long[Classes];
    private readonly PriorityQueue<LogGap, double> _widest = new();
    private long _steps;

    /// <summary>Counts the rows that bear the time of the row before.</summary>
    public long Repeated { get; private set; }

    /// <summary>Takes the step to a row; it is not negative.</summary>
    public void Add(int line, double from, double to)
    {
        var step = to - from;
        if (step <= 0)
        {
            Repeated++;
            return;
        }

        _steps++;
        _counts[Math.Clamp((int)(8 * Math.Log2(step / Shortest)), 0, Classes - 1)]++;
        if (step < ShortestGapSeconds || (_widest.Count == MostGaps && _widest.TryPeek(out _, out var narrowest) && step <= narrowest))
            return;
        _widest.Enqueue(new(line, from, to), step);
        if (_widest.Count > MostGaps)
            _widest.Dequeue();
    }

    /// <summary>The median step in seconds, right to a tenth; zero when there is none.</summary>
    public double TypicalSeconds
    {
        get
        {
            var (seen, at) = (0L, 0);
            while (at < Classes - 1 && 2 * (seen + _counts[at]) < _steps)
                seen += _counts[at++];
            return _steps == 0 ? 0 : Shortest * Math.Pow(2, (at + 0.5) / 8);
        }
    }

    /// <summary>The gaps, in order.</summary>
    public LogGap[] Gaps() =>
        [.. _widest.UnorderedItems.Select(item => item.Element).Where(gap => gap.ToSeconds - gap.FromSeconds > StepsOfAGap * TypicalSeconds).OrderBy(gap => gap.FromSeconds)];
}
