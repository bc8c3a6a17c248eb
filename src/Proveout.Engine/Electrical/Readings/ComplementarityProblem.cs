using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>Solves w = q + M z with w, z ≥ 0 and no index at which both are above zero, for a symmetric positive definite M.</summary>
/// <remarks>
/// Least-index principal pivoting, finite for every P-matrix: Murty, Linear Complementarity, Linear and Nonlinear Programming (1988), chapter 4.
/// For junctions: z their currents, w what their voltages lack of the forward voltage.
/// </remarks>
internal static class ComplementarityProblem
{
    // Volts and amperes that are rounding, not a change of state: far below what a meter resolves.
    private const double Rounding = 1e-9;

    // The worst case grows without bound; the machines of the samples take a few hundred steps.
    private const int MostSteps = 20_000;

    /// <summary>The solution z, or null when it was not reached within the limit of steps.</summary>
    public static double[]? Solve(DoubleDouble[,] matrix, DoubleDouble[] vector)
    {
        var size = vector.Length;
        var basis = new bool[size];
        for (var step = 0; step < MostSteps; step++)
        {
            int[] inside = [.. Enumerable.Range(0, size).Where(index => basis[index])];
            var solved = PositiveDefinite.Solve(matrix, vector, inside);
            if (LeastViolated(matrix, vector, basis, inside, solved) is not { } violated)
                return Spread(size, inside, solved);
            basis[violated] = !basis[violated];
        }

        return null;
    }

    private static int? LeastViolated(DoubleDouble[,] matrix, DoubleDouble[] vector, bool[] basis, int[] inside, DoubleDouble[] solved)
    {
        var place = 0;
        for (var index = 0; index < basis.Length; index++)
        {
            var value = basis[index] ? solved[place++] : Slack(matrix, vector, index, inside, solved);
            if ((double)value < -Rounding)
                return index;
        }

        return null;
    }

    private static DoubleDouble Slack(DoubleDouble[,] matrix, DoubleDouble[] vector, int row, int[] inside, DoubleDouble[] solved)
    {
        var sum = vector[row];
        for (var place = 0; place < inside.Length; place++)
            sum += matrix[row, inside[place]] * solved[place];
        return sum;
    }

    private static double[] Spread(int size, int[] inside, DoubleDouble[] solved)
    {
        var all = new double[size];
        for (var place = 0; place < inside.Length; place++)
            all[inside[place]] = Math.Max(0, (double)solved[place]);
        return all;
    }
}
