namespace Proveout.Fuzz;

/// <summary>Changes of lines and of the cells in them: the form of tables, of indented text, and of fields that are written one to a line.</summary>
/// <param name="random">Chooses.</param>
internal sealed class LineChanges(Random random)
{
    private static readonly byte[] Separators = [(byte)',', (byte)';', (byte)'\t', (byte)':', (byte)'=', (byte)'|'];

    public IReadOnlyList<Func<byte[], byte[], byte[]>> All => [SwapLines, RemoveLine, RepeatLine, BorrowLine, BorrowLine, Indent, SwapCells, ChangeSeparator, EmptyCell];

    private byte[] SwapLines(byte[] input, byte[] other) => Edit(input, Swap);

    private byte[] RemoveLine(byte[] input, byte[] other) => Edit(input, lines =>
    {
        lines.RemoveAt(random.Next(lines.Count));
        return lines;
    });

    private byte[] RepeatLine(byte[] input, byte[] other) => Edit(input, lines =>
    {
        lines.Insert(random.Next(lines.Count + 1), lines[random.Next(lines.Count)]);
        return lines;
    });

    private byte[] BorrowLine(byte[] input, byte[] other) => Edit(input, lines =>
    {
        var others = Split(other, (byte)'\n');
        lines.Insert(random.Next(lines.Count + 1), others[random.Next(others.Count)]);
        return lines;
    });

    private byte[] Indent(byte[] input, byte[] other) => Edit(input, lines =>
    {
        var at = random.Next(lines.Count);
        lines[at] = random.Next(2) == 0 ? [(byte)' ', (byte)' ', .. lines[at]] : lines[at] is [(byte)' ', (byte)' ', .. var rest] ? rest : [(byte)'\t', .. lines[at]];
        return lines;
    });

    private byte[] SwapCells(byte[] input, byte[] other) => EditCells(input, Swap);

    private byte[] ChangeSeparator(byte[] input, byte[] other)
    {
        var (from, into) = (Separators[random.Next(Separators.Length)], Separators[random.Next(Separators.Length)]);
        return [.. input.Select(value => value == from ? into : value)];
    }

    private byte[] EmptyCell(byte[] input, byte[] other) => EditCells(input, cells =>
    {
        cells[random.Next(cells.Count)] = [];
        return cells;
    });

    private byte[] EditCells(byte[] input, Func<List<byte[]>, List<byte[]>> edit) => Edit(input, lines =>
    {
        var (at, separator) = (random.Next(lines.Count), Separators[random.Next(Separators.Length)]);
        lines[at] = Join(edit(Split(lines[at], separator)), separator);
        return lines;
    });

    private List<byte[]> Swap(List<byte[]> items)
    {
        var (one, two) = (random.Next(items.Count), random.Next(items.Count));
        (items[one], items[two]) = (items[two], items[one]);
        return items;
    }

    private static byte[] Edit(byte[] input, Func<List<byte[]>, List<byte[]>> edit) => Join(edit(Split(input, (byte)'\n')), (byte)'\n');

    private static List<byte[]> Split(byte[] input, byte separator)
    {
        var pieces = new List<byte[]>();
        var start = 0;
        for (var at = 0; at <= input.Length; at++)
        {
            if (at < input.Length && input[at] != separator)
                continue;
            pieces.Add(input[start..at]);
            start = at + 1;
        }

        return pieces;
    }

    private static byte[] Join(List<byte[]> pieces, byte separator)
    {
        var joined = new List<byte>();
        foreach (var (index, piece) in pieces.Index())
        {
            if (index > 0)
                joined.Add(separator);
            joined.AddRange(piece);
        }

        return [.. joined];
    }
}
