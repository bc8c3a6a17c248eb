namespace Proveout.Engine.Faults;

/// <summary>Turns lists of columns by row into lists of rows by column.</summary>
internal static class Transposed
{
    /// <summary>For each column the rows that hold it, rising.</summary>
    public static int[][] Of(IReadOnlyList<int[]> rows, int columns)
    {
        var counts = new int[columns];
        foreach (var row in rows)
            foreach (var column in row)
                counts[column]++;
        int[][] rowsOf = [.. counts.Select(count => count == 0 ? [] : new int[count])];
        Array.Clear(counts);
        for (var row = 0; row < rows.Count; row++)
            foreach (var column in rows[row])
                rowsOf[column][counts[column]++] = row;
        return rowsOf;
    }
}
