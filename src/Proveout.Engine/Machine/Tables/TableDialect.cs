namespace Proveout.Engine.Machine;

/// <summary>How a text file separates its cells.</summary>
/// <param name="Separator">The separator; a blank stands for any run of blanks.</param>
/// <remarks>
/// Own code instead of a library: what is wrong is told with the column at which a cell begins, which the libraries at hand do not keep.
/// Quotation is that of RFC 4180, within one line.
/// </remarks>
internal readonly record struct TableDialect(char Separator)
{
    private static readonly char[] Known = ['\t', ';', ','];

    /// <summary>The dialect of a line: a tab separates before a semicolon, that before a comma, and without any of them blanks do.</summary>
    public static TableDialect Of(string line)
    {
        foreach (var separator in Known)
            if (!(separator == ',' && AreDecimalCommas(line)) && new TableDialect(separator).Cells(line).Count > 1)
                return new(separator);
        return new(' ');
    }

    // "0,1 0,2" is two numbers, not three.
    private static bool AreDecimalCommas(string line) =>
        line.Split((char[])[' ', '\t'], StringSplitOptions.RemoveEmptyEntries) is { Length: > 1 } words
        && words.All(word => word[^1] != ',' && new TableCell(word, 1).Number is not null);

    /// <summary>The name of the separator, for a sentence.</summary>
    public string Name => Separator switch { '\t' => "tabs", ';' => "semicolons", ',' => "commas", _ => "blanks" };

    /// <summary>The cells of a line.</summary>
    public List<TableCell> Cells(string line)
    {
        List<TableCell> cells = [];
        for (var at = 0; at <= line.Length;)
        {
            if (Separator == ' ' && (at = Past(line, at)) == line.Length)
                break;
            cells.Add(Next(line, ref at));
        }

        return cells;
    }

    private TableCell Next(string line, ref int at)
    {
        var first = at;
        while (first < line.Length && line[first] is ' ' or '\t' && line[first] != Separator)
            first++;
        if (first < line.Length && line[first] == '"')
            return Quoted(line, first, ref at);
        var end = at;
        while (end < line.Length && !Separates(line[end]))
            end++;
        var text = line[at..end].Trim();
        at = end + 1;
        return new(text, Math.Min(first, end) + 1);
    }

    private TableCell Quoted(string line, int first, ref int at)
    {
        var text = new System.Text.StringBuilder();
        var place = first + 1;
        while (place < line.Length && !(line[place] == '"' && (place + 1 == line.Length || line[place + 1] != '"')))
        {
            text.Append(line[place]);
            place += line[place] == '"' ? 2 : 1;
        }

        var isClosed = place < line.Length;
        var end = Math.Min(place + 1, line.Length);
        while (end < line.Length && !Separates(line[end]))
            end++;
        at = end + 1;
        return new(text.ToString().Trim(), first + 1, isClosed);
    }

    private bool Separates(char letter) => Separator == ' ' ? letter is ' ' or '\t' : letter == Separator;

    private static int Past(string line, int at)
    {
        while (at < line.Length && line[at] is ' ' or '\t')
            at++;
        return at;
    }
}
