using Spectre.Console;

namespace Proveout.Cli;

/// <summary>A table: columns with a head, rows of text.</summary>
/// <param name="heads">Heads of the columns.</param>
internal sealed class Sheet(params string[] heads)
{
    private const int Gap = 2;

    private readonly List<string[]> _rows = [];

    public void Add(params string[] cells) => _rows.Add([.. cells.Select(ShownText.Of)]);

    /// <summary>The table in lines of text, each row on one line, so that other programs can read it.</summary>
    public void WritePlain(TextWriter writer)
    {
        int[] widths = [.. heads.Select((head, column) => _rows.Select(row => row[column].Length).Append(head.Length).Max())];
        foreach (var row in _rows.Prepend(heads))
            writer.WriteLine(string.Concat(row.Select((cell, column) => cell.PadRight(widths[column] + Gap))).TrimEnd());
    }

    /// <summary>The table for a screen: a rule under the heads, no other lines.</summary>
    public Table OnScreen()
    {
        var table = new Table { Border = TableBorder.Simple };
        foreach (var head in heads)
            table.AddColumn(new TableColumn(new Text(head)));
        foreach (var row in _rows)
            table.AddRow(row.Select(cell => new Text(cell)));
        return table;
    }
}
