using System.Text;
using Proveout.Engine.Machine;

namespace Proveout.Engine.Motion;

/// <summary>Rows of a table of accelerations, one by one from a stream.</summary>
internal sealed class SignalRows
{
    private static readonly string[] Nothing = ["", "-", "nan", "n/a", "na", "null", "none"];

    private readonly LineBytes _lines;
    private readonly string _file;
    private readonly SignalColumns _columns;
    private readonly int[] _slots;
    private byte _mark;

    private SignalRows(LineBytes lines, string file, SignalColumns columns)
    {
        (_lines, _file, _columns) = (lines, file, columns);
        // Where each column goes: the time first, then the directions; -1 for what is not wanted.
        _slots = [.. Enumerable.Repeat(-1, columns.Count)];
        _slots[columns.Time] = 0;
        foreach (var (index, direction) in columns.Directions.Index())
            _slots[direction.Column] = index + 1;
    }

    /// <summary>What the columns hold.</summary>
    public SignalColumns Columns => _columns;

    /// <summary>Line of the row that was read last.</summary>
    public int Line => _lines.Number;

    /// <summary>Why reading stopped before the end; null when it did not.</summary>
    public Diagnostic? Problem { get; private set; }

    /// <summary>True when the last line broke off and was left out.</summary>
    public bool EndsCutOff { get; private set; }

    /// <summary>Power of ten of the last digit of the time that was read last.</summary>
    public int TimePower { get; private set; }

    /// <summary>Reads the line of headings.</summary>
    public static Outcome<SignalRows> Of(Stream stream, string file, SignalOptions options)
    {
        var lines = new LineBytes(stream);
        var beginning = lines.Beginning;
        if (beginning.Length > 1 && (beginning[0] == 0 || beginning[1] == 0 || beginning[..2].SequenceEqual((byte[])[0xFF, 0xFE]) || beginning[..2].SequenceEqual((byte[])[0xFE, 0xFF])))
            return Refused(new("not-utf-8", new(file, 0, 0), "The file is no text in UTF-8: it holds two bytes for each letter, or no text at all.", "Save it as CSV in UTF-8."));
        if (beginning.StartsWith((byte[])[0xEF, 0xBB, 0xBF]))
            lines.Skip(3);
        while (lines.TryNext(out var line))
        {
            if (IsEmpty(line))
                continue;
            var columns = SignalColumns.Of(Encoding.UTF8.GetString(line), new(file, lines.Number, 1), options);
            return columns.Value is { } known ? Outcome.Of(new SignalRows(lines, file, known)) : Outcome.Refused<SignalRows>(columns.Diagnostics);
        }

        return Refused(lines.IsTooLong ? TooLong(file, lines) : new("empty-table", new(file, 0, 0), "The file holds no table.", "Record again, and see that the recorder was stopped before the file was copied."));
    }

    /// <summary>The next row: the time, then the directions; not a number where nothing was measured. False at the end or at a problem.</summary>
    public bool TryNext(Span<double> row)
    {
        while (_lines.TryNext(out var line))
        {
            if (IsEmpty(line))
                continue;
            if (TryRow(line, row))
                return true;
            if (_lines.IsCutOff)
                (EndsCutOff, Problem) = (true, null);
            return false;
        }

        if (_lines.IsTooLong)
            Problem = TooLong(_file, _lines);
        return false;
    }

    private bool TryRow(ReadOnlySpan<byte> line, Span<double> row)
    {
        var (column, at) = (0, 0);
        while (true)
        {
            at = _columns.Separator == ' ' ? PastBlanks(line, at) : at;
            var length = line[at..].IndexOf((byte)_columns.Separator);
            var cell = Bare(length < 0 ? line[at..] : line.Slice(at, length));
            if (length < 0 && cell.IsEmpty && _columns.Separator == ' ' && column > 0)
                break;
            if (column < _slots.Length && _slots[column] >= 0 && !TryCell(cell, _slots[column], row))
            {
                Problem ??= new("not-a-number", new(_file, Line, at + 1), $"{Quote.Of(Shown(cell))} is not a number.", "Write it like 12.5 or 12,5, without a unit; leave the cell empty when nothing was measured.");
                return false;
            }

            column++;
            if (length < 0)
                break;
            at += length + 1;
        }

        if (column == _slots.Length)
            return true;
        Problem = WrongCount(column);
        return false;
    }

    private bool TryCell(ReadOnlySpan<byte> cell, int slot, Span<double> row)
    {
        if (!DecimalBytes.TryRead(cell, out var value, out var power, out var mark))
        {
            row[slot] = double.NaN;
            return cell.Length <= 4 && Nothing.Contains(Encoding.UTF8.GetString(cell), StringComparer.OrdinalIgnoreCase);
        }

        if (mark != 0 && mark != _mark && _mark != 0)
        {
            Problem = new("point-and-comma", new(_file, Line, 1), $"{Quote.Of(Shown(cell))} is written with a {(mark == ',' ? "comma" : "point")}, earlier numbers with a {(mark == ',' ? "point" : "comma")}.", "Use one of the two throughout the file, and nothing between thousands.");
            return false;
        }

        _mark = mark == 0 ? _mark : mark;
        TimePower = slot == 0 ? power : TimePower;
        row[slot] = value;
        return true;
    }

    private Diagnostic WrongCount(int found) => new(
        "wrong-number-of-cells",
        new(_file, Line, 1),
        $"This row has {found} cells, separated by {new TableDialect(_columns.Separator).Name}; the first line has {_columns.Count}.",
        _columns.Separator == ',' && found > _columns.Count
            ? "If the commas are decimal commas, save the file with semicolons between the columns."
            : "Give every row as many cells; leave a cell empty when nothing was measured.");

    // Most cells have nothing around them.
    private static ReadOnlySpan<byte> Bare(ReadOnlySpan<byte> cell) =>
        cell.Length > 0 && cell[0] > (byte)'"' && cell[^1] > (byte)'"' ? cell : cell.Trim(" \t\""u8);

    private static bool IsEmpty(ReadOnlySpan<byte> line) => line.Length == 0 || (line[0] <= (byte)'#' && line.Trim(" \t"u8) is { IsEmpty: true } or [(byte)'#', ..]);

    private static int PastBlanks(ReadOnlySpan<byte> line, int at)
    {
        while (at < line.Length && line[at] is (byte)' ' or (byte)'\t')
            at++;
        return at;
    }

    private static string Shown(ReadOnlySpan<byte> cell) => Encoding.UTF8.GetString(cell[..Math.Min(cell.Length, 256)]);

    private static Diagnostic TooLong(string file, LineBytes lines) =>
        new("long-line", new(file, lines.Number + 1, 1), $"A line is longer than {LineBytes.LongestLine / 1024} kB: this is no table of accelerations.", "Choose the CSV file of the recording.");

    private static Outcome<SignalRows> Refused(Diagnostic problem) => Outcome.Refused<SignalRows>([problem]);
}
