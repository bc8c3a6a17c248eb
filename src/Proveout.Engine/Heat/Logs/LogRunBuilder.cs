namespace Proveout.Engine.Heat;

/// <summary>Gathers the rows of one run.</summary>
/// <param name="columns">The columns.</param>
/// <param name="start">Why it begins.</param>
/// <param name="firstLine">Line of its first row.</param>
/// <param name="zero">Time of its first row.</param>
internal sealed class LogRunBuilder(LogColumns columns, LogRunStart start, int firstLine, double zero)
{
    private readonly LogBuckets _buckets = new(columns.Values.Count);
    private readonly LogSteps _steps = new();
    private readonly LogSensorWatch?[] _watches = [.. columns.Values.Select(column => column.Role == LogRole.Sensor ? new LogSensorWatch(column.Name) : null)];
    private readonly int[] _outputOf = OutputsOf(columns.Values);
    private double _before;
    private int _lastLine;
    private long _rows;

    /// <summary>How long it lasts so far.</summary>
    public double LastsSeconds => _before;

    /// <summary>True when a sensor jumped back to where it began, so that another run begins with the row just taken.</summary>
    public bool IsBackAtStart { get; private set; }

    /// <summary>Time of the row taken last, as the log has it.</summary>
    public double Last => zero + _before;

    /// <summary>Takes a row.</summary>
    /// <param name="line">Its line.</param>
    /// <param name="time">Its time, not before the row before.</param>
    /// <param name="values">Its values in the order of the columns; those that no sensor can have measured are taken out.</param>
    /// <param name="faulty">True for each cell that says open or short.</param>
    public void Add(int line, double time, Span<double> values, ReadOnlySpan<bool> faulty)
    {
        var seconds = time - zero;
        if (_rows > 0)
            _steps.Add(line, _before, seconds);
        for (var index = 0; index < _watches.Length; index++)
        {
            if (_watches[index] is not { } watch)
                continue;
            if (faulty[index])
                watch.SaidFaulty(line, seconds);
            values[index] = watch.Take(line, seconds, values[index], _outputOf[index] >= 0 ? values[_outputOf[index]] : double.NaN);
            IsBackAtStart |= watch.BackAtStartLine is not null;
        }

        _buckets.Add(line, seconds, values);
        (_before, _lastLine) = (seconds, line);
        _rows++;
    }

    /// <summary>The run, with outputs as they stand in the log.</summary>
    public LogRun Build()
    {
        var count = _buckets.Count;
        var (seconds, lines) = (new double[count], new int[count]);
        for (var bucket = 0; bucket < count; bucket++)
            (lines[bucket], seconds[bucket]) = _buckets.HeadOf(bucket);
        return new LogRun(start, firstLine, _lastLine, _rows, seconds, lines, SeriesOf(LogRole.Sensor), SeriesOf(LogRole.Output), SeriesOf(LogRole.Target))
        {
            StepSeconds = _steps.TypicalSeconds,
            RepeatedTimes = _steps.Repeated,
            Gaps = _steps.Gaps(),
            Flaws = [.. _watches.OfType<LogSensorWatch>().SelectMany(watch => watch.Flaws)],
            LongestSame = [.. _watches.OfType<LogSensorWatch>().Select(watch => watch.LongestSame).OfType<LogFlaw>()],
        };
    }

    private LogSeries[] SeriesOf(LogRole role) =>
    [
        .. from column in columns.Values.Index()
           where column.Item.Role == role
           let values = Enumerable.Range(0, _buckets.Count).Select(bucket => _buckets.Of(bucket, column.Index)).ToArray()
           select new LogSeries(column.Item.Name, column.Item.Stem, [.. values.Select(value => value.Mean)], [.. values.Select(value => value.Least)], [.. values.Select(value => value.Most)]),
    ];

    // The output with the same words in its heading, or the only one.
    private static int[] OutputsOf(IReadOnlyList<LogColumn> values)
    {
        (int Index, LogColumn Item)[] outputs = [.. values.Index().Where(column => column.Item.Role == LogRole.Output)];
        return [.. values.Select(column => outputs.Length == 1 ? outputs[0].Index : outputs.Where(output => output.Item.Stem == column.Stem).Select(output => output.Index).FirstOrDefault(-1))];
    }
}
