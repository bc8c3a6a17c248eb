using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>The columns of a log.</summary>
/// <param name="File">Name of the file as the user gave it.</param>
/// <param name="Heading">The line of headings.</param>
/// <param name="Dialect">How cells are separated.</param>
/// <param name="Count">How many columns there are.</param>
/// <param name="Time">The time.</param>
/// <param name="Values">Temperatures, outputs and targets, in the order of the file.</param>
/// <param name="Ignored">Headings of the columns that are not used.</param>
internal sealed record LogColumns(
    string File, string Heading, TableDialect Dialect, int Count, LogColumn Time, IReadOnlyList<LogColumn> Values, IReadOnlyList<string> Ignored)
{
    // Each takes memory for the whole log.
    private const int MostValues = 24;

    /// <summary>The columns of a line of headings; adds what keeps it from being used.</summary>
    public static LogColumns? Of(string heading, SourcePlace line, LogHints hints, List<Diagnostic> problems)
    {
        var dialect = TableDialect.Of(heading);
        var cells = dialect.Cells(heading);
        if (cells.Exists(cell => cell.Number is not null))
        {
            problems.Add(new("no-headings", line with { Column = 1 }, "The first line holds numbers where headings belong.", "Put a line of headings first, such as `time [s]; plate temperature [degC]; output [%]`."));
            return null;
        }

        LogColumn[] all = [.. cells.Select((cell, index) => LogHeadings.Of(index, cell.Text, hints))];
        // A single letter may stand for a temperature as well as for the time.
        var time = all.FirstOrDefault(column => column.Role == LogRole.Time && column.Name.Length > 1) ?? all.FirstOrDefault(column => column.Role == LogRole.Time);
        LogColumn[] values = [.. all.Where(column => column.Role is LogRole.Sensor or LogRole.Output or LogRole.Target)];
        string Headings() => string.Join(", ", cells.Select(cell => Quote.Of(cell.Text)));
        if (time is null)
            problems.Add(new("no-time-column", line, $"No column is headed as the time; the headings are {Headings()}.", "Head it `time [s]`, or `time [ms]`, or `time` for hh:mm:ss or ISO 8601."));
        if (!values.Any(column => column.Role == LogRole.Sensor))
            problems.Add(new("no-temperature-column", line, $"No column is headed as a temperature; the headings are {Headings()}.", "Head it such as `plate temperature [degC]`, or give its heading as that of the temperature (--sensor)."));
        foreach (var (named, role) in new[] { (hints.Sensor, LogRole.Sensor), (hints.Output, LogRole.Output) })
            if (named is not null && !values.Any(column => column.Role == role && IsNamed(column, cells[column.Index].Text, named)))
                problems.Add(new("no-such-column", line, $"There is no column {Quote.Of(named)}; the headings are {Headings()}.", "Name one of them."));
        if (time is not null && ColumnUnit.Find(time.Unit) is { Kind: not "time" })
            problems.Add(new("wrong-unit", line with { Column = cells[time.Index].Column }, $"{Quote.Of(cells[time.Index].Text)} is headed in {time.Unit}, which is no unit of time.", "Give it in s, ms, min or h."));
        foreach (var column in values)
            if (column.Role != LogRole.Output && ColumnUnit.Find(column.Unit) is { Kind: not "temperature" })
                problems.Add(new("wrong-unit", line with { Column = cells[column.Index].Column }, $"{Quote.Of(cells[column.Index].Text)} is headed in {column.Unit}, which is no unit of temperature.", "Give it in degC, K or degF."));
        if (values.Length > MostValues)
            problems.Add(new("too-many-columns", line, $"There are {values.Length} columns of temperatures, outputs and targets; at most {MostValues} are read.", "Leave out those that are not needed."));
        return problems.Count > 0 ? null : new(line.File, heading, dialect, cells.Count, time!, values, [.. all.Where(column => column.Role == LogRole.Other || (column.Role == LogRole.Time && column != time)).Select(column => cells[column.Index].Text).Where(text => text.Length > 0)]);
    }

    private static bool IsNamed(LogColumn column, string text, string named) =>
        named.Equals(text, StringComparison.OrdinalIgnoreCase) || named.Equals(column.Name, StringComparison.OrdinalIgnoreCase);
}
