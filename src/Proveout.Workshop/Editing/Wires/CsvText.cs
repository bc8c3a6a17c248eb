using System.Buffers;
using System.Text;

namespace Proveout.Workshop;

/// <summary>Comma-separated values, RFC 4180; read also with semicolons or tabs, as spreadsheets of some countries write them.</summary>
internal static class CsvText
{
    private static readonly SearchValues<char> NeedsQuotes = SearchValues.Create(",;\"\r\n\t");

    private static readonly char[] Separators = [',', ';', '\t'];

    /// <summary>Records as text.</summary>
    public static string Write(IEnumerable<IEnumerable<string>> records) =>
        string.Concat(records.Select(record => string.Join(',', record.Select(Quoted)) + "\r\n"));

    /// <summary>The records of a text; lines without anything are left out.</summary>
    public static IReadOnlyList<CsvLine> Read(string text)
    {
        var content = text.TrimStart('\uFEFF');
        var separator = SeparatorOf(content);
        var records = new List<CsvLine>();
        var (at, line) = (0, 1);
        while (at < content.Length)
        {
            var start = line;
            var cells = new List<string>();
            var closed = true;
            do
                cells.Add(Cell(content, separator, ref at, ref line, ref closed));
            while (at < content.Length && content[at - 1] == separator);
            // A separator at the very end leaves one more, empty cell.
            if (at == content.Length && content[at - 1] == separator && closed)
                cells.Add("");
            if (cells.Any(cell => cell.Length > 0))
                records.Add(new(start, cells, closed));
        }

        return records;
    }

    // Reads one cell and the separator or line break behind it.
    private static string Cell(string text, char separator, ref int at, ref int line, ref bool closed)
    {
        var cell = new StringBuilder();
        var quoted = text[at] == '"';
        for (at += quoted ? 1 : 0; at < text.Length; at++)
        {
            var sign = text[at];
            if (quoted && sign == '"' && at + 1 < text.Length && text[at + 1] == '"')
                at++;
            else if (quoted && sign == '"')
            {
                quoted = false;
                continue;
            }
            else if (!quoted && sign == separator)
            {
                at++;
                return cell.ToString();
            }
            else if (!quoted && sign == '\n')
            {
                at++;
                line++;
                return cell.ToString();
            }

            line += sign == '\n' ? 1 : 0;
            if (quoted || sign != '\r')
                cell.Append(sign);
        }

        closed = !quoted;
        return cell.ToString();
    }

    private static char SeparatorOf(string text)
    {
        var head = text.AsSpan(0, text.IndexOf('\n', StringComparison.Ordinal) is >= 0 and var end ? end : text.Length).ToString();
        return Separators.MaxBy(separator => head.Count(sign => sign == separator));
    }

    private static string Quoted(string text) =>
        text.AsSpan().ContainsAny(NeedsQuotes) || text.Trim().Length < text.Length ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
