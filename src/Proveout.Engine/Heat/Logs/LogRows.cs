using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>Reads the rows of a log one by one and sorts them into runs.</summary>
/// <param name="columns">The columns.</param>
/// <param name="hints">What a person says of the log.</param>
/// <param name="problems">Gets what is wrong.</param>
internal sealed class LogRows(LogColumns columns, LogHints hints, List<Diagnostic> problems)
{
    private const int MostProblems = 20;
    private const int MostRuns = 8;
    private const int MostResets = 1000;
    private const double JitterSeconds = 2;

    private readonly LogClock _clock = new(columns.Time);
    private readonly double[] _values = new double[columns.Values.Count];
    private readonly bool[] _faulty = new bool[columns.Values.Count];
    private readonly Range[] _cells = new Range[columns.Count + 1];
    private readonly List<LogRun> _runs = [];
    private LogRunBuilder? _run;
    private LogRunStart _next = LogRunStart.First;
    private double? _zero;
    private int _dropped;
    private int _resets;
    private (int Line, int Cells)? _short;
    private bool? _hasComma;

    /// <summary>True when there is no use in reading on.</summary>
    public bool IsHopeless => problems.Count >= MostProblems;

    /// <summary>How many rows were taken.</summary>
    public long Rows { get; private set; }

    /// <summary>The time of day begins anew at midnight; plain numbers have no unit.</summary>
    public LogClock Clock => _clock;

    /// <summary>Takes a line that is no comment and not blank.</summary>
    public void Add(int number, ReadOnlySpan<char> line)
    {
        if (number < hints.FromLine || number > hints.ToLine)
            return;
        if (line.Trim().SequenceEqual(columns.Heading))
        {
            Restart(LogRunStart.HeadingsAgain);
            return;
        }

        if (_short is { } before)
            problems.Add(WrongCount(before.Line, before.Cells));
        _short = null;
        if (line.Contains('"'))
        {
            var cells = columns.Dialect.Cells(line.ToString());
            line = string.Join('\u0001', cells.Select(cell => cell.Text));
            Take(number, line, line.Split(_cells, '\u0001'));
            return;
        }

        Take(number, line, columns.Dialect.Separator == ' ' ? line.SplitAny(_cells, " \t", StringSplitOptions.RemoveEmptyEntries) : line.Split(_cells, columns.Dialect.Separator));
    }

    /// <summary>The runs, the last one ended; and whether the last row breaks off.</summary>
    public (IReadOnlyList<LogRun> Runs, int Dropped, bool IsCutShort) Finish()
    {
        EndRun();
        return (_runs, _dropped, _short is not null);
    }

    private void Take(int number, ReadOnlySpan<char> line, int count)
    {
        if (count != columns.Count)
        {
            _short = (number, count);
            return;
        }

        var cell = line[_cells[columns.Time.Index]].Trim();
        if (!_clock.TryRead(cell, out var time))
        {
            problems.Add(new("no-time", Place(number), $"{Quote.Of(cell.ToString())} is no time.", "Write seconds, milliseconds with `[ms]` in the heading, hh:mm:ss, or ISO 8601 such as 2026-11-28T09:30:00."));
            return;
        }

        for (var index = 0; index < _values.Length; index++)
            if (!TryValue(number, columns.Values[index], line[_cells[columns.Values[index].Index]].Trim(), index))
                return;
        Keep(number, time);
    }

    private bool TryValue(int number, LogColumn column, ReadOnlySpan<char> cell, int index)
    {
        var kind = column.Role == LogRole.Output ? LogCell.ReadOutput(cell, out var value) : LogCell.Read(cell, out value);
        _faulty[index] = kind == LogCellKind.Faulty;
        _values[index] = column.InUnit(value);
        if (kind == LogCellKind.Strange)
            problems.Add(new("not-a-number", Place(number), $"{Quote.Of(cell.ToString())} under {Quote.Of(column.Name)} is not a number.", "Write it like 12.5 or 12,5, without a unit; leave the cell empty when nothing was measured."));
        else if (kind == LogCellKind.Number && cell.IndexOfAny('.', ',') is >= 0 and var at && (_hasComma ??= cell[at] == ',') != (cell[at] == ','))
            problems.Add(new("point-and-comma", Place(number), $"{Quote.Of(cell.ToString())} is written with a {(cell[at] == ',' ? "comma" : "point")}, earlier numbers with a {(cell[at] == ',' ? "point" : "comma")}.", "Use one of the two throughout the file, and nothing between thousands."));
        else
            return true;
        return false;
    }

    private void Keep(int number, double time)
    {
        if (_run is not null && time < _run.Last)
        {
            // Rows a little out of order are a busy logger's, not a restart.
            if (_run.Last - time > JitterSeconds)
                Restart(LogRunStart.TimeBack);
            else
                time = _run.Last;
        }

        // Times to leave out count from the first row of the log.
        _zero ??= time;
        if (time - _zero < hints.FromSeconds || time - _zero > hints.ToSeconds)
            return;
        Rows++;
        _run ??= new LogRunBuilder(columns, _next, number, time);
        _run.Add(number, time, _values, _faulty);
        if (!_run.IsBackAtStart)
            return;
        Restart(LogRunStart.TemperatureBack);
        _run = new LogRunBuilder(columns, _next, number, time);
        _run.Add(number, time, _values, _faulty);
    }

    private void Restart(LogRunStart why)
    {
        EndRun();
        _next = why;
        if (++_resets == MostResets)
            problems.Add(new("too-many-restarts", Place(0), $"Time or temperature jumps back {MostResets} times.", "Give a log whose rows stand in the order of time."));
    }

    private void EndRun()
    {
        if (_run is null)
            return;
        _runs.Add(_run.Build());
        _run = null;
        if (_runs.Count <= MostRuns)
            return;
        _runs.Remove(_runs.MinBy(run => run.LastsSeconds)!);
        _dropped++;
    }

    private SourcePlace Place(int line) => new(columns.File, line, line > 0 ? 1 : 0);

    private Diagnostic WrongCount(int line, int found) => new(
        "wrong-number-of-cells",
        Place(line),
        $"This row has {(found > columns.Count ? "more" : $"{found}")} cells, separated by {columns.Dialect.Name}; the headings are {columns.Count}.",
        columns.Dialect.Separator == ',' && found > columns.Count ? "If the commas are decimal commas, save the file with semicolons between the columns." : "Give every row as many cells; leave a cell empty when nothing was measured.");
}
