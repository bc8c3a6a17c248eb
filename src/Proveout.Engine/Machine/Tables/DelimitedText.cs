namespace Proveout.Engine.Machine;

/// <summary>
/// Reads a table of numbers from text: any order of columns, tabs, semicolons, commas or blanks between them, decimal point or comma,
/// units in the headings, quoted cells, empty cells, comments after <c>#</c>.
/// </summary>
public static class DelimitedText
{
    /// <summary>Most rows that are read; a plate map of 200 by 200 points fits twice.</summary>
    public const int MostRows = 100_000;

    private const int MostProblems = 20;

    // Beyond every table that people make; each heading is held against all others.
    private const int MostColumns = 1000;

    /// <summary>A table with headings.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Name of the file as the user gave it.</param>
    public static Outcome<DataTable> Read(string text, string file)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = LinesOf(text);
        if (lines.Count == 0)
            return Refused<DataTable>(new("empty-table", new SourcePlace(file, 0, 0), "The file holds no table.", "Give a line of headings and a line for each row."));
        var dialect = TableDialect.Of(lines[0].Text);
        var heads = dialect.Cells(lines[0].Text);
        if (heads.Count > MostColumns)
            return Refused<DataTable>(TooManyColumns(new SourcePlace(file, lines[0].Number, 1), heads.Count));
        List<Diagnostic> problems = [];
        var columns = HeadsOf(heads, new SourcePlace(file, lines[0].Number, 0), problems);
        if (lines.Count == 1)
            problems.Add(new("no-rows", new SourcePlace(file, lines[0].Number, 1), "There is no row below the headings.", "Give a line for each row."));
        var rows = NumbersOf(lines[1..], dialect, heads.Count, file, problems);
        return problems.Count > 0
            ? Outcome.Refused<DataTable>(problems)
            : Outcome.Of(new DataTable(file, [.. columns.Select((head, index) => new DataColumn(head.Name, head.Unit, [.. rows.Select(row => row[index])]))], [.. lines[1..].Select(line => line.Number)]));
    }

    /// <summary>A grid of numbers without headings, row by row as typed; every row has as many.</summary>
    public static Outcome<IReadOnlyList<IReadOnlyList<double>>> ReadGrid(string text, string file)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = LinesOf(text);
        if (lines.Count == 0)
            return Refused<IReadOnlyList<IReadOnlyList<double>>>(new("empty-table", new SourcePlace(file, 0, 0), "There are no numbers.", "Type a line of numbers for each row of points."));
        var dialect = TableDialect.Of(lines[0].Text);
        List<Diagnostic> problems = [];
        var rows = NumbersOf(lines, dialect, dialect.Cells(lines[0].Text).Count, file, problems);
        return problems.Count > 0
            ? Outcome.Refused<IReadOnlyList<IReadOnlyList<double>>>(problems)
            : Outcome.Of<IReadOnlyList<IReadOnlyList<double>>>([.. rows.Select(row => (IReadOnlyList<double>)row)]);
    }

    private static Outcome<T> Refused<T>(Diagnostic problem)
        where T : class => Outcome.Refused<T>([problem]);

    private static List<(int Number, string Text)> LinesOf(string text) =>
    [
        .. text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n').Select((line, index) => (Number: index + 1, Text: line))
            .Where(line => line.Text.AsSpan().Trim() is { Length: > 0 } content && content[0] != '#')
            .Take(MostRows + 2),
    ];

    private static List<TableHead> HeadsOf(List<TableCell> cells, SourcePlace line, List<Diagnostic> problems)
    {
        List<TableHead> heads = [.. cells.Select(cell => TableHead.Of(cell.Text))];
        foreach (var (index, cell) in cells.Index())
        {
            var place = line with { Column = cell.Column };
            if (!cell.IsClosed)
                problems.Add(OpenQuote(place));
            else if (cell.Number is not null)
                problems.Add(new("no-headings", place, $"The first line holds the number {Quote.Of(cell.Text)} where a heading belongs.", "Put a line of headings first, such as `x [mm]; y [mm]; height [mm]`."));
            else if (heads[index] is { Name.Length: > 0 } head && heads.FindIndex(each => each.Name.Equals(head.Name, StringComparison.OrdinalIgnoreCase)) != index)
                problems.Add(new("heading-twice", place, $"The heading {Quote.Of(head.Name)} stands twice.", "Rename or remove one of the columns."));
        }

        return heads;
    }

    private static List<double[]> NumbersOf(List<(int Number, string Text)> lines, TableDialect dialect, int count, string file, List<Diagnostic> problems)
    {
        List<double[]> rows = [];
        bool? comma = null;
        foreach (var (number, text) in lines.Take(MostRows))
        {
            var cells = dialect.Cells(text);
            if (cells.Count != count)
                problems.Add(WrongCount(new SourcePlace(file, number, 1), cells.Count, count, dialect));
            else
                rows.Add([.. cells.Select(cell => NumberOf(cell, new SourcePlace(file, number, cell.Column), ref comma, problems))]);
            if (problems.Count >= MostProblems)
                return rows;
        }

        if (lines.Count > MostRows)
            problems.Add(new("too-many-rows", new SourcePlace(file, lines[MostRows].Number, 1), $"There are more than {MostRows} rows.", "Thin the data out, or cut it into parts."));
        return rows;
    }

    private static double NumberOf(TableCell cell, SourcePlace place, ref bool? comma, List<Diagnostic> problems)
    {
        if (cell.IsMissing && cell.IsClosed)
            return double.NaN;
        if (!cell.IsClosed)
            problems.Add(OpenQuote(place));
        else if (cell.Number is not { } number)
            problems.Add(new("not-a-number", place, $"{Quote.Of(cell.Text)} is not a number.", "Write it like 12.5 or 12,5, without a unit and without signs between thousands; leave the cell empty when nothing was measured."));
        else if ((cell.HasDecimalComma || cell.Text.Contains('.', StringComparison.Ordinal)) && (comma ??= cell.HasDecimalComma) != cell.HasDecimalComma)
            problems.Add(new("point-and-comma", place, $"{Quote.Of(cell.Text)} is written with a {(cell.HasDecimalComma ? "comma" : "point")}, earlier numbers with a {(cell.HasDecimalComma ? "point" : "comma")}.", "Use one of the two throughout the file, and nothing between thousands."));
        else
            return number;
        return double.NaN;
    }

    private static Diagnostic TooManyColumns(SourcePlace place, int count) =>
        new("too-many-columns", place, $"The first line has {count} cells; at most {MostColumns} columns are read.", "Leave out columns that are not needed.");

    private static Diagnostic OpenQuote(SourcePlace place) => new("open-quotation", place, "A quotation mark opens here and is not closed on this line.", "Close it, or remove it.");

    private static Diagnostic WrongCount(SourcePlace place, int found, int wanted, TableDialect dialect) => new(
        "wrong-number-of-cells",
        place,
        $"This row has {found} cells, separated by {dialect.Name}; the first line has {wanted}.",
        dialect.Separator == ',' && found > wanted
            ? "If the commas are decimal commas, save the file with semicolons between the columns."
            : "Give every row as many cells; leave a cell empty when nothing was measured.");
}
