namespace Proveout.Engine.Motion;

/// <summary>The first rows of a recording, held until its rate is known.</summary>
internal sealed class SignalHead
{
    private readonly double[] _times;
    private readonly double[] _values;
    private readonly int[] _lines;
    private readonly int _width;
    private readonly int _count;

    /// <param name="rows">Where they come from.</param>
    /// <param name="most">How many are held.</param>
    public SignalHead(SignalRows rows, int most)
    {
        _width = rows.Columns.Directions.Count;
        (_times, _values, _lines) = (new double[most], new double[most * _width], new int[most]);
        var row = new double[_width + 1];
        while (_count < most)
        {
            if (!rows.TryNext(row))
            {
                IsWhole = true;
                break;
            }

            if (!IsComplete(row))
            {
                Missing++;
                continue;
            }

            TimePower = _count == 0 ? rows.TimePower : Math.Min(TimePower, rows.TimePower);
            (_times[_count], _lines[_count]) = (row[0], rows.Line);
            row.AsSpan(1).CopyTo(_values.AsSpan(_count * _width));
            _count++;
        }
    }

    /// <summary>The times.</summary>
    public ReadOnlySpan<double> Times => _times.AsSpan(0, _count);

    /// <summary>True when these are all.</summary>
    public bool IsWhole { get; }

    /// <summary>Power of ten of the finest digit of the times.</summary>
    public int TimePower { get; }

    /// <summary>Rows in which something was not measured.</summary>
    public long Missing { get; set; }

    /// <summary>The accelerations of a row.</summary>
    public ReadOnlySpan<double> Values(int row) => _values.AsSpan(row * _width, _width);

    /// <summary>Line of a row in the file.</summary>
    public int Line(int row) => _lines[row];

    /// <summary>True when everything of a row was measured.</summary>
    public static bool IsComplete(ReadOnlySpan<double> row)
    {
        foreach (var value in row)
            if (double.IsNaN(value))
                return false;
        return true;
    }
}
