namespace Proveout.Engine.Numerics;

/// <summary>Solves w = q + M z with w, z ≥ 0 and no index at which both are above zero, for a symmetric positive definite M.</summary>
/// <remarks>
/// Least-index principal pivoting, finite for every P-matrix: Murty, Linear Complementarity, Linear and Nonlinear Programming (1988), chapter 4.
/// For junctions: z their currents, w what their voltages lack of the forward voltage.
/// </remarks>
internal static class ComplementarityProblem
{
    // Volts and amperes that are rounding, not a change of state. An attoampere through a gigohm is a nanovolt, far below what a meter resolves.
    private const double RoundingVolts = 1e-9;
    private const double RoundingAmperes = 1e-18;

    // The worst case grows without bound; the machines of the samples take a few hundred steps.
    private const int MostSteps = 20_000;

    /// <summary>The solution z, or null when it was not reached within the limit of steps.</summary>
    /// <param name="matrix">M, entry by entry.</param>
    /// <param name="vector">q.</param>
    /// <param name="basis">Indices at which z is tried above zero first; afterwards, those at which it is.</param>
    public static DoubleDouble[]? Solve(Func<int, int, DoubleDouble> matrix, DoubleDouble[] vector, bool[] basis)
    {
        var inside = new List<int>();
        for (var step = 0; step < MostSteps; step++)
        {
            inside.Clear();
            for (var index = 0; index < basis.Length; index++)
                if (basis[index])
                    inside.Add(index);
            var solved = PositiveDefinite.Solve(matrix, vector, inside);
            if (LeastViolated(matrix, vector, basis, inside, solved) is not { } violated)
                return Spread(vector.Length, inside, solved);
            basis[violated] = !basis[violated];
        }

        return null;
    }

    private static int? LeastViolated(Func<int, int, DoubleDouble> matrix, DoubleDouble[] vector, bool[] basis, List<int> inside, DoubleDouble[] solved)
    {
        var place = 0;
        for (var index = 0; index < basis.Length; index++)
        {
            var isBelow = basis[index]
                ? (double)solved[place++] < -RoundingAmperes
                : (double)Slack(matrix, vector, index, inside, solved) < -RoundingVolts;
            if (isBelow)
                return index;
        }

        return null;
    }

    private static DoubleDouble Slack(Func<int, int, DoubleDouble> matrix, DoubleDouble[] vector, int row, List<int> inside, DoubleDouble[] solved)
    {
        var sum = vector[row];
        for (var place = 0; place < solved.Length; place++)
            sum += matrix(row, inside[place]) * solved[place];
        return sum;
    }

    private static DoubleDouble[] Spread(int size, List<int> inside, DoubleDouble[] solved)
    {
        var all = new DoubleDouble[size];
        for (var place = 0; place < solved.Length; place++)
            all[inside[place]] = solved[place];
        return all;
    }
}
