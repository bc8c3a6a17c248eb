using Proveout.Engine.Machine;

namespace Proveout.Engine.Heat;

/// <summary>
/// Reads a log of heaters: any order of columns, tabs, semicolons, commas or blanks between them, decimal point or comma, units in the headings, time as seconds,
/// milliseconds, hh:mm:ss or ISO 8601. Row by row, thinned while it comes in: ten million rows take no more memory than thirty thousand.
/// </summary>
public static class HeatLogReader
{
    // So far apart in plain numbers, rows are a fraction of a second apart and the numbers are milliseconds, or the log is useless: a person says which.
    private const double StrangeStep = 50;

    /// <summary>Reads a log.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="file">Its name as the user gave it.</param>
    /// <param name="hints">What a person says of it.</param>
    public static Outcome<HeatLog> Read(TextReader text, string file, LogHints hints)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(hints);
        var lines = new LogLines(text);
        List<Diagnostic> problems = [];
        LogColumns? columns = null;
        LogRows? rows = null;
        while (lines.Next(out var line) && rows is not { IsHopeless: true })
        {
            var content = line.Trim();
            if (content.Length == 0 || content[0] == '#')
                continue;
            if (rows is not null)
                rows.Add(lines.Number, line);
            else if ((columns = LogColumns.Of(content.ToString(), new SourcePlace(file, lines.Number, 1), hints, problems)) is null)
                return Outcome.Refused<HeatLog>(problems);
            else
                rows = new LogRows(columns, hints, problems);
        }

        if (lines.IsNoText)
            problems.Add(new("no-table", new SourcePlace(file, lines.Number + 1, 1), "A line is longer than any row of a log.", "Give a text file with a line for each row."));
        else if (rows is null)
            problems.Add(new("empty-table", new SourcePlace(file, 0, 0), "The file holds no table.", "Give a line of headings and a line for each row."));
        return problems.Count > 0 ? Outcome.Refused<HeatLog>(problems) : Finish(columns!, rows!, hints);
    }

    private static Outcome<HeatLog> Finish(LogColumns columns, LogRows rows, LogHints hints)
    {
        var (runs, dropped, isCutShort) = rows.Finish();
        if (runs.Count == 0)
            return Refused(new("no-rows", new SourcePlace(columns.File, 0, 0), "There is no whole row below the headings, or none between the times asked for.", "Give a line for each row."));
        if (rows.Clock.IsBareNumber && runs.MaxBy(run => run.Rows)!.StepSeconds >= StrangeStep)
            return Refused(new("unit-of-time", new SourcePlace(columns.File, runs[0].FirstLine, 1), $"{Quote.Of(columns.Time.Name)} has no unit and rises by {runs[0].StepSeconds:0} or so from row to row: milliseconds?", "Head it `time [ms]` or `time [s]`."));
        if (LogUnits.Strange(columns, runs) is { } strange)
            return Refused(strange);
        var scale = LogScale.Of(columns, runs, hints);
        return scale.Value is { } known
            ? Outcome.Of(new HeatLog(columns.File, rows.Rows, [.. runs.Select(known.Apply)], columns.Ignored, dropped, known.Full, known.IsTaken, isCutShort))
            : Outcome.Refused<HeatLog>(scale.Diagnostics);
    }

    private static Outcome<HeatLog> Refused(Diagnostic problem) => Outcome.Refused<HeatLog>([problem]);
}
