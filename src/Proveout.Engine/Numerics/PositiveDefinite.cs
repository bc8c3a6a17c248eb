namespace Proveout.Engine.Numerics;

/// <summary>Solves the equations of a chosen set of rows and columns of a symmetric positive definite matrix.</summary>
/// <remarks>LDLᵀ without pivoting, which a positive definite matrix does not need: Golub and Van Loan, Matrix Computations, 4.2.</remarks>
internal static class PositiveDefinite
{
    /// <summary>Solves M z = -q on the chosen indices.</summary>
    public static DoubleDouble[] Solve(Func<int, int, DoubleDouble> matrix, DoubleDouble[] vector, List<int> chosen)
    {
        var lower = new DoubleDouble[chosen.Count, chosen.Count];
        var diagonal = new DoubleDouble[chosen.Count];
        var solution = new DoubleDouble[chosen.Count];
        for (var row = 0; row < chosen.Count; row++)
        {
            for (var column = 0; column <= row; column++)
            {
                var sum = matrix(chosen[row], chosen[column]);
                for (var inner = 0; inner < column; inner++)
                    sum -= lower[row, inner] * diagonal[inner] * lower[column, inner];
                if (row == column)
                    diagonal[row] = sum;
                else
                    lower[row, column] = sum / diagonal[column];
            }

            solution[row] = -vector[chosen[row]];
            for (var inner = 0; inner < row; inner++)
                solution[row] -= lower[row, inner] * solution[inner];
        }

        for (var row = chosen.Count - 1; row >= 0; row--)
        {
            solution[row] /= diagonal[row];
            for (var below = row + 1; below < chosen.Count; below++)
                solution[row] -= lower[below, row] * solution[below];
        }

        return solution;
    }
}
