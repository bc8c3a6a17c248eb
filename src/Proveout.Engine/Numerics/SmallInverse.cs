namespace Proveout.Engine.Numerics;

/// <summary>Inverts small dense matrices in double-double.</summary>
internal static class SmallInverse
{
    /// <summary>Inverts a square matrix by Gauss-Jordan elimination with row pivoting; the argument is overwritten.</summary>
    /// <returns>The inverse, or null when the matrix is singular to working precision.</returns>
    public static DoubleDouble[,]? Invert(DoubleDouble[,] matrix)
    {
        var size = matrix.GetLength(0);
        var inverse = new DoubleDouble[size, size];
        for (var index = 0; index < size; index++)
            inverse[index, index] = 1;
        for (var column = 0; column < size; column++)
            if (!Eliminate(matrix, inverse, column))
                return null;
        return inverse;
    }

    private static bool Eliminate(DoubleDouble[,] matrix, DoubleDouble[,] inverse, int column)
    {
        var size = matrix.GetLength(0);
        var pivotRow = column;
        for (var row = column + 1; row < size; row++)
            if (Math.Abs(matrix[row, column].High) > Math.Abs(matrix[pivotRow, column].High))
                pivotRow = row;
        if (matrix[pivotRow, column].High == 0)
            return false;
        if (pivotRow != column)
            for (var index = 0; index < size; index++)
            {
                (matrix[column, index], matrix[pivotRow, index]) = (matrix[pivotRow, index], matrix[column, index]);
                (inverse[column, index], inverse[pivotRow, index]) = (inverse[pivotRow, index], inverse[column, index]);
            }

        var scale = (DoubleDouble)1 / matrix[column, column];
        for (var index = 0; index < size; index++)
        {
            matrix[column, index] *= scale;
            inverse[column, index] *= scale;
        }

        for (var row = 0; row < size; row++)
        {
            var factor = matrix[row, column];
            if (row == column || factor.High == 0)
                continue;
            for (var index = 0; index < size; index++)
            {
                matrix[row, index] -= factor * matrix[column, index];
                inverse[row, index] -= factor * inverse[column, index];
            }
        }

        return true;
    }
}
