namespace Proveout.Engine.Motion;

/// <summary>Gauss-Jordan elimination of a few equations, with the largest pivot of each column.</summary>
internal static class RowReduction
{
    /// <summary>Reduces rows in place.</summary>
    /// <param name="rows">The equations, a row each.</param>
    /// <param name="pivotColumns">How many leading columns may hold a pivot.</param>
    /// <param name="least">What is smaller counts as nothing.</param>
    /// <returns>The row of each column's pivot, or -1.</returns>
    public static int[] Run(double[][] rows, int pivotColumns, double least)
    {
        var pivots = Enumerable.Repeat(-1, pivotColumns).ToArray();
        var done = 0;
        for (var column = 0; column < pivotColumns && done < rows.Length; column++)
        {
            var best = Enumerable.Range(done, rows.Length - done).MaxBy(row => Math.Abs(rows[row][column]));
            if (Math.Abs(rows[best][column]) <= least)
                continue;
            (rows[done], rows[best]) = (rows[best], rows[done]);
            Clear(rows, done, column);
            pivots[column] = done++;
        }

        return pivots;
    }

    private static void Clear(double[][] rows, int pivot, int column)
    {
        var divisor = rows[pivot][column];
        for (var at = 0; at < rows[pivot].Length; at++)
            rows[pivot][at] /= divisor;
        foreach (var row in rows.Where((_, index) => index != pivot))
        {
            var factor = row[column];
            for (var at = 0; factor != 0 && at < row.Length; at++)
                row[at] -= factor * rows[pivot][at];
        }
    }
}
