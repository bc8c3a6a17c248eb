using System.Globalization;

namespace Proveout.Engine.Heat;

/// <summary>What stands in a cell of a log.</summary>
internal enum LogCellKind
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>Nothing.</summary>
    Missing,

    /// <summary>Word of a sensor whose circuit is open or short.</summary>
    Faulty,

    /// <summary>Something that cannot be used.</summary>
    Strange,
}

/// <summary>Reads cells without making texts of them.</summary>
internal static class LogCell
{
    private const int LongestNumber = 40;

    private static readonly string[] Nothing = ["", "-", "–", "—", "nan", "n/a", "na", "null", "none"];
    private static readonly string[] Faults = ["open", "short", "fault", "error", "err", "ol", "inf", "-inf", "+inf", "infinity", "-infinity", "---", "disconnected"];

    /// <summary>Reads a number, with a decimal point or comma.</summary>
    /// <param name="cell">The cell without blanks around it.</param>
    /// <param name="number">The number; not a number when there is none.</param>
    public static LogCellKind Read(ReadOnlySpan<char> cell, out double number)
    {
        if (double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number))
            return LogCellKind.Number;
        number = double.NaN;
        if (IsAny(cell, Nothing))
            return LogCellKind.Missing;
        if (IsAny(cell, Faults))
            return LogCellKind.Faulty;
        return cell.Length <= LongestNumber && WithPoint(cell, out number) ? LogCellKind.Number : LogCellKind.Strange;
    }

    /// <summary>Reads what a heater is told: a number, or a word for on or off.</summary>
    public static LogCellKind ReadOutput(ReadOnlySpan<char> cell, out double number)
    {
        if (cell.Equals("on", StringComparison.OrdinalIgnoreCase) || cell.Equals("true", StringComparison.OrdinalIgnoreCase))
            return Known(1, out number);
        if (cell.Equals("off", StringComparison.OrdinalIgnoreCase) || cell.Equals("false", StringComparison.OrdinalIgnoreCase))
            return Known(0, out number);
        return Read(cell, out number);
    }

    private static LogCellKind Known(double value, out double number)
    {
        number = value;
        return LogCellKind.Number;
    }

    // A comma and a point both, or two commas: nobody can know which is which.
    private static bool WithPoint(ReadOnlySpan<char> cell, out double number)
    {
        number = double.NaN;
        var comma = cell.IndexOf(',');
        if (comma != cell.LastIndexOf(',') || (comma >= 0 && cell.Contains('.')))
            return false;
        Span<char> plain = stackalloc char[cell.Length];
        cell.CopyTo(plain);
        if (comma >= 0)
            plain[comma] = '.';
        plain.Replace('−', '-');
        return double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
    }

    private static bool IsAny(ReadOnlySpan<char> cell, string[] words)
    {
        foreach (var word in words)
            if (cell.Equals(word, StringComparison.OrdinalIgnoreCase))
                return true;
        return false;
    }
}
