using Google.OrTools.LinearSolver;

namespace Proveout.Engine.Numerics;

/// <summary>
/// The linear fit whose largest residual is least (Chebyshev's): a linear programme in the unknowns and that residual.
/// For a plane it gives the minimum zone that ISO 12781-1 defines flatness by.
/// </summary>
internal static class Minimax
{
    /// <summary>The unknowns and the largest residual; null when the programme has no single solution.</summary>
    public static (double[] Values, double Largest)? Fit(IReadOnlyList<double[]> design, ReadOnlySpan<double> observed)
    {
        if (design.Count == 0 || LeastSquares.Fit(design, observed) is not { } start)
            return null;
        // Solved about the least-squares fit and in units of its largest residual, so that the solver's tolerances are small beside the answer.
        var unit = start.Residuals.Max(Math.Abs);
        if (unit < 1e-12 * (1 + start.Values.Max(Math.Abs)))
            return (start.Values, unit);
        using var solver = Solver.CreateSolver("GLOP");
        var scales = Enumerable.Range(0, start.Values.Length).Select(column => design.Max(row => Math.Abs(row[column]))).ToArray();
        Variable[] unknowns = [.. scales.Select(_ => solver.MakeNumVar(double.NegativeInfinity, double.PositiveInfinity, ""))];
        var largest = solver.MakeNumVar(0, double.PositiveInfinity, "");
        for (var row = 0; row < design.Count; row++)
            foreach (var sign in (ReadOnlySpan<double>)[1, -1])
            {
                var bound = solver.MakeConstraint(sign * start.Residuals[row] / unit, double.PositiveInfinity, "");
                bound.SetCoefficient(largest, 1);
                for (var column = 0; column < unknowns.Length; column++)
                    bound.SetCoefficient(unknowns[column], sign * design[row][column] / scales[column]);
            }

        solver.Objective().SetCoefficient(largest, 1);
        solver.Objective().SetMinimization();
        if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
            return null;
        return ([.. start.Values.Select((value, column) => value + (unknowns[column].SolutionValue() * unit / scales[column]))], largest.SolutionValue() * unit);
    }
}
