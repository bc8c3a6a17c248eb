using Google.OrTools.Sat;

namespace Proveout.Engine.Faults;

/// <summary>Solves a part of a cover by constraint programming (OR-Tools CP-SAT).</summary>
internal static class ExactCover
{
    /// <summary>Improves a solution of a part as far as a fixed amount of work allows.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="part">The part.</param>
    /// <param name="start">A solution to start from, such as the greedy one.</param>
    /// <param name="work">Work allowed, in the solver's deterministic seconds, so that every computer gets the same plan.</param>
    public static PartSolution Improve(CoverProblem problem, CoverPart part, PartSolution start, double work)
    {
        var model = new CpModel();
        var taken = part.Columns.ToDictionary(column => column, column => model.NewBoolVar(""));
        var setUps = part.SetUps.ToDictionary(setUp => setUp, setUp => model.NewBoolVar(""));
        foreach (var row in part.Rows)
            model.AddBoolOr(row.Select(column => (ILiteral)taken[column]));
        foreach (var (column, variable) in taken)
            if (setUps.TryGetValue(problem.Columns[column].SetUp, out var setUp))
                model.AddImplication(variable, setUp);
        Hint(model, problem, taken, setUps, start);
        model.Minimize(LinearExpr.WeightedSum(
            [.. taken.Values, .. setUps.Values],
            [.. taken.Keys.Select(column => problem.Columns[column].Units), .. setUps.Keys.Select(setUp => problem.SetUpUnits[setUp])]));

        // The linear relaxation of a set cover is nearly whole, so the solver is told to lean on it.
        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant($"max_deterministic_time:{work} num_workers:1 random_seed:1 linearization_level:2"),
        };
        var status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            return start;
        int[] columns = [.. part.Columns.Where(column => solver.BooleanValue(taken[column]))];
        var lower = Math.Max(start.LowerUnits, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-3)); // costs are whole, so the bound may be rounded up
        var units = part.Units(problem, columns);
        return units <= start.Units ? new PartSolution(columns, units, lower) : start with { LowerUnits = lower };
    }

    private static void Hint(CpModel model, CoverProblem problem, Dictionary<int, BoolVar> taken, Dictionary<int, BoolVar> setUps, PartSolution start)
    {
        var chosen = start.Columns.ToHashSet();
        var used = start.Columns.Select(column => problem.Columns[column].SetUp).ToHashSet();
        foreach (var (column, variable) in taken)
            model.AddHint(variable, chosen.Contains(column) ? 1 : 0);
        foreach (var (setUp, variable) in setUps)
            model.AddHint(variable, used.Contains(setUp) ? 1 : 0);
    }
}
