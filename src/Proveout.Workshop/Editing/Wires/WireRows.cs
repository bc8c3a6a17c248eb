using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Reads the rows of a wire list.</summary>
internal static class WireRows
{
    private const int MostRows = 20_000;
    private const int MostNamed = 5;

    private static string ColumnNames => string.Join(", ", WireColumns.All.Select(column => column.Heading).Prepend(WireColumns.Wire).Select(Quote.Of));

    /// <summary>The rows, or everything that is wrong with them.</summary>
    public static Outcome<IReadOnlyList<WireRow>> Read(NamedText list)
    {
        var records = CsvText.Read(list.Text);
        if (records.Count == 0)
            return Outcome.Refused<IReadOnlyList<WireRow>>([At(list, 0, "empty-table", "The list is empty.", "Give a line of headings and a line for each wire.")]);
        if (records.Count > MostRows)
            return Outcome.Refused<IReadOnlyList<WireRow>>([At(list, records[MostRows].Number, "too-many-rows", $"There are more than {MostRows} rows.", "Cut the list into parts.")]);
        List<Diagnostic> problems = [];
        var columns = ColumnsOf(list, records[0], problems);
        if (problems.Count > 0)
            return Outcome.Refused<IReadOnlyList<WireRow>>(problems);
        var rows = records.Skip(1).Select(record => RowOf(list, record, columns, problems)).OfType<WireRow>().ToArray();
        foreach (var twice in rows.GroupBy(row => row.Name, StringComparer.Ordinal).Where(same => same.Skip(1).Any()))
            problems.Add(At(list, twice.ElementAt(1).Line, "wire-twice", $"The wire {Quote.Of(twice.Key)} stands in line {twice.First().Line} already.", "Give each wire one line."));
        return problems.Count > 0 ? Outcome.Refused<IReadOnlyList<WireRow>>(problems) : Outcome.Of<IReadOnlyList<WireRow>>(rows);
    }

    // The field of each column; null for the column of names.
    private static RowField?[] ColumnsOf(NamedText list, CsvLine head, List<Diagnostic> problems)
    {
        var headings = head.Cells.Select(cell => GuardedCell.In(cell.Trim())).ToArray();
        string[] unknown = [.. headings.Where(heading => !IsKnown(heading)).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (unknown.Length == headings.Length)
        {
            problems.Add(At(list, head.Number, "no-wire-list", "None of the headings is that of a wire list.", $"Choose a list that was saved here, or head its columns {ColumnNames}."));
            return [];
        }

        if (unknown.Length > 0)
            problems.Add(At(
                list,
                head.Number,
                "unknown-column",
                unknown.Length == 1 ? $"{Quote.Of(unknown[0])} is not a column of a wire list." : $"{string.Join(", ", unknown.Take(MostNamed).Select(Quote.Of))}{(unknown.Length > MostNamed ? $" and {unknown.Length - MostNamed} more" : "")} are not columns of a wire list.",
                $"The columns are {ColumnNames}; take the others out."));
        foreach (var twice in headings.GroupBy(heading => heading, StringComparer.OrdinalIgnoreCase).Where(same => same.Skip(1).Any()))
            problems.Add(At(list, head.Number, "heading-twice", $"The heading {Quote.Of(twice.Key)} stands twice.", "Take one of the columns out."));
        if (!headings.Contains(WireColumns.Wire, StringComparer.OrdinalIgnoreCase))
            problems.Add(At(list, head.Number, "no-such-column", $"There is no column {Quote.Of(WireColumns.Wire)}.", "The first line holds the headings; one of them names the wires."));
        return [.. headings.Select(FieldOf)];
    }

    private static WireRow? RowOf(NamedText list, CsvLine record, RowField?[] columns, List<Diagnostic> problems)
    {
        if (!record.IsClosed)
            problems.Add(At(list, record.Number, "open-quotation", "A quotation mark opens in this row and none closes it.", "Close it, or take it out."));
        else if (record.Cells.Count != columns.Length)
            problems.Add(At(list, record.Number, "wrong-number-of-cells", $"This row has {record.Cells.Count} cells; the headings are {columns.Length}.", "Give every row as many cells, and put quotation marks round a cell with a comma in it."));
        else
        {
            var cells = record.Cells.Select(cell => GuardedCell.In(cell.Trim())).ToArray();
            var name = cells[Array.IndexOf(columns, null)];
            if (name.Length > 0)
                return new(record.Number, name, [.. columns.Zip(cells).Where(pair => pair.First is not null).Select(pair => (pair.First!, WireColumns.TextOf(pair.First!, pair.Second)))]);
            problems.Add(At(list, record.Number, "empty", "The wire of this row has no name.", "Give it one, such as `W12`."));
        }

        return null;
    }

    private static bool IsKnown(string heading) => heading.Equals(WireColumns.Wire, StringComparison.OrdinalIgnoreCase) || FieldOf(heading) is not null;

    private static RowField? FieldOf(string heading) =>
        WireColumns.All.FirstOrDefault(column => column.Heading.Equals(heading, StringComparison.OrdinalIgnoreCase)).Field;

    private static Diagnostic At(NamedText list, int line, string rule, string message, string mend) => new(rule, new SourcePlace(list.Name, line, line > 0 ? 1 : 0), message, mend);
}
