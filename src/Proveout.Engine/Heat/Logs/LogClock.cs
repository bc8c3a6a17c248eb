using System.Globalization;

namespace Proveout.Engine.Heat;

/// <summary>Reads the time of a row: a number, a time of day, or a date with time as ISO 8601 writes it.</summary>
/// <param name="column">The column of times.</param>
internal sealed class LogClock(LogColumn column)
{
    private const double DaySeconds = 86_400;

    private double _days;
    private double _before = double.NegativeInfinity;

    /// <summary>True when a time of day was read: these begin anew at midnight.</summary>
    public bool IsTimeOfDay { get; private set; }

    /// <summary>True when plain numbers without a unit were read.</summary>
    public bool IsBareNumber { get; private set; }

    /// <summary>Reads a time in seconds from any beginning; false when it cannot be read.</summary>
    public bool TryRead(ReadOnlySpan<char> cell, out double seconds)
    {
        if (LogCell.Read(cell, out var number) == LogCellKind.Number)
        {
            IsBareNumber |= column.Unit.Length == 0;
            seconds = column.InUnit(number);
            return true;
        }

        if (cell.Length >= 10 && cell[4] == '-' && cell[7] == '-')
            return TryDate(cell, out seconds);
        return TryTimeOfDay(cell, out seconds);
    }

    private static bool TryDate(ReadOnlySpan<char> cell, out double seconds)
    {
        var isRead = DateTimeOffset.TryParse(cell, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var when);
        seconds = (when - DateTimeOffset.UnixEpoch).TotalSeconds;
        return isRead;
    }

    // hh:mm:ss with parts of a second after a point or comma. Two parts could be hours and minutes, or minutes and seconds: not read.
    private bool TryTimeOfDay(ReadOnlySpan<char> cell, out double seconds)
    {
        seconds = double.NaN;
        var first = cell.IndexOf(':');
        var second = cell.LastIndexOf(':');
        if (first <= 0 || second == first
            || !int.TryParse(cell[..first], NumberStyles.None, CultureInfo.InvariantCulture, out var hours)
            || !int.TryParse(cell[(first + 1)..second], NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            || LogCell.Read(cell[(second + 1)..], out var rest) != LogCellKind.Number
            || minutes > 59 || rest is < 0 or >= 60)
            return false;
        IsTimeOfDay = true;
        seconds = _days + (3600.0 * hours) + (60 * minutes) + rest;
        // Past midnight the clock falls by nearly a day; a smaller fall is the logger's.
        if (seconds < _before - (DaySeconds / 2))
        {
            _days += DaySeconds;
            seconds += DaySeconds;
        }

        _before = seconds;
        return true;
    }
}
