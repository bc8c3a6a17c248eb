using System.Text;

namespace Proveout.Publish.Schedules;

/// <summary>Writes a schedule as comma-separated values, RFC 4180.</summary>
public static class CsvSchedule
{
    /// <summary>The heading line and the rows; what a spreadsheet would take for a formula is led by an apostrophe.</summary>
    public static string Write(Schedule schedule)
    {
        var text = new StringBuilder();
        WriteLine(text, schedule.Columns.Select(column => column.Heading));
        foreach (var row in schedule.Rows)
            WriteLine(text, row);
        return text.ToString();
    }

    private static void WriteLine(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    private static string Cell(string text)
    {
        var clean = PlainText.Clean(text == Schedule.Box ? "" : text);
        if (clean is ['=' or '+' or '-' or '@', ..])
            clean = "'" + clean;
        return clean.AsSpan().ContainsAny(',', '"') ? $"\"{clean.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : clean;
    }
}
