namespace Proveout.Engine.Numerics;

/// <summary>Weighted linear least squares by Householder reflections: Golub and Van Loan, Matrix Computations, 5.2 and 5.3.</summary>
internal static class LeastSquares
{
    // A column that keeps less than this share of its length beside the columns before it adds nothing that doubles can tell.
    private const double LeastShare = 1e-10;

    /// <summary>Fits; null when the observations do not determine the unknowns.</summary>
    /// <param name="design">A row of coefficients for each observation.</param>
    /// <param name="observed">What was observed.</param>
    /// <param name="standards">Standard uncertainty of each observation; empty when all are alike and unknown.</param>
    public static LinearFit? Fit(IReadOnlyList<double[]> design, ReadOnlySpan<double> observed, ReadOnlySpan<double> standards = default)
    {
        var (rows, columns) = (design.Count, design.Count == 0 ? 0 : design[0].Length);
        if (rows < columns || columns == 0)
            return null;
        var matrix = new double[rows, columns];
        var right = new double[rows];
        for (var row = 0; row < rows; row++)
        {
            var weight = standards.IsEmpty ? 1 : 1 / standards[row];
            right[row] = observed[row] * weight;
            for (var column = 0; column < columns; column++)
                matrix[row, column] = design[row][column] * weight;
        }

        var scales = Normalise(matrix);
        var weighted = (double[,])matrix.Clone();
        if (!Reflect(matrix, right))
            return null;
        var inverse = InverseOfTriangle(matrix, columns);
        var values = new double[columns];
        for (var row = 0; row < columns; row++)
            for (var column = row; column < columns; column++)
                values[row] += inverse[row, column] * right[column] / scales[row];
        return Result(design, observed, standards, values, CofactorsOf(inverse, scales), RedundanciesOf(weighted, inverse));
    }

    private static LinearFit Result(
        IReadOnlyList<double[]> design, ReadOnlySpan<double> observed, ReadOnlySpan<double> standards, double[] values, double[,] cofactors, double[] redundancies)
    {
        var residuals = new double[design.Count];
        var squares = 0.0;
        for (var row = 0; row < design.Count; row++)
        {
            var fitted = 0.0;
            for (var column = 0; column < values.Length; column++)
                fitted += design[row][column] * values[column];
            residuals[row] = observed[row] - fitted;
            var share = residuals[row] / (standards.IsEmpty ? 1 : standards[row]);
            squares += share * share;
        }

        return new(values, cofactors, residuals, redundancies, design.Count - values.Length, squares);
    }

    // Columns of length 1, so that what counts as dependent does not hang on units.
    private static double[] Normalise(double[,] matrix)
    {
        var scales = new double[matrix.GetLength(1)];
        for (var column = 0; column < scales.Length; column++)
        {
            var length = Length(matrix, column, 0);
            scales[column] = length > 0 ? length : 1;
            for (var row = 0; row < matrix.GetLength(0); row++)
                matrix[row, column] /= scales[column];
        }

        return scales;
    }

    private static bool Reflect(double[,] matrix, double[] right)
    {
        var (rows, columns) = (matrix.GetLength(0), matrix.GetLength(1));
        var mirror = new double[rows];
        for (var step = 0; step < columns; step++)
        {
            var length = Length(matrix, step, step);
            if (!(length > LeastShare))
                return false;
            var corner = matrix[step, step] > 0 ? -length : length;
            for (var row = step; row < rows; row++)
                mirror[row] = matrix[row, step];
            mirror[step] -= corner;
            var square = 0.0;
            for (var row = step; row < rows; row++)
                square += mirror[row] * mirror[row];
            for (var column = step + 1; column < columns; column++)
            {
                var factor = 0.0;
                for (var row = step; row < rows; row++)
                    factor += mirror[row] * matrix[row, column];
                factor *= 2 / square;
                for (var row = step; row < rows; row++)
                    matrix[row, column] -= factor * mirror[row];
            }

            var share = 0.0;
            for (var row = step; row < rows; row++)
                share += mirror[row] * right[row];
            share *= 2 / square;
            for (var row = step; row < rows; row++)
                right[row] -= share * mirror[row];
            matrix[step, step] = corner;
        }

        return true;
    }

    private static double Length(double[,] matrix, int column, int from)
    {
        var sum = 0.0;
        for (var row = from; row < matrix.GetLength(0); row++)
            sum += matrix[row, column] * matrix[row, column];
        return Math.Sqrt(sum);
    }

    private static double[,] InverseOfTriangle(double[,] triangle, int size)
    {
        var inverse = new double[size, size];
        for (var column = 0; column < size; column++)
        {
            inverse[column, column] = 1 / triangle[column, column];
            for (var row = column - 1; row >= 0; row--)
            {
                var sum = 0.0;
                for (var inner = row + 1; inner <= column; inner++)
                    sum += triangle[row, inner] * inverse[inner, column];
                inverse[row, column] = -sum / triangle[row, row];
            }
        }

        return inverse;
    }

    private static double[,] CofactorsOf(double[,] inverse, double[] scales)
    {
        var size = scales.Length;
        var cofactors = new double[size, size];
        for (var row = 0; row < size; row++)
            for (var column = 0; column < size; column++)
                for (var inner = Math.Max(row, column); inner < size; inner++)
                    cofactors[row, column] += inverse[row, inner] * inverse[column, inner] / (scales[row] * scales[column]);
        return cofactors;
    }

    // One less the leverage: the row of Q = A R⁻¹ has its square as length.
    private static double[] RedundanciesOf(double[,] weighted, double[,] inverse)
    {
        var redundancies = new double[weighted.GetLength(0)];
        for (var row = 0; row < redundancies.Length; row++)
        {
            var leverage = 0.0;
            for (var column = 0; column < inverse.GetLength(0); column++)
            {
                var entry = 0.0;
                for (var inner = 0; inner <= column; inner++)
                    entry += weighted[row, inner] * inverse[inner, column];
                leverage += entry * entry;
            }

            redundancies[row] = Math.Clamp(1 - leverage, 0, 1);
        }

        return redundancies;
    }
}
