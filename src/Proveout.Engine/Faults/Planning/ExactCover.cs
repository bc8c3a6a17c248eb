using Google.OrTools.Sat;

namespace Proveout.Engine.Faults;

/// <summary>Chooses the cheapest checks by constraint programming (OR-Tools CP-SAT).</summary>
internal static class ExactCover
{
    // The linear relaxation of a set cover is nearly whole, so the solver is told to lean on it. Deterministic work units rather than seconds,
    // so that the same machine gets the same plan on any computer.
    private const double DeterministicSeconds = 4;
    private const int UnitsASecond = 10;

    /// <summary>Improves a plan; null when the solver finds none within its limit.</summary>
    /// <returns>The checks and the lower bound on the cost of any plan in seconds.</returns>
    public static (List<int> Checks, double LowerBoundSeconds)? Choose(FaultDictionary dictionary, CoverProblem problem, IReadOnlyList<int> start)
    {
        var model = new CpModel();
        var taken = problem.Columns.ToDictionary(column => column, column => model.NewBoolVar(dictionary.Checks[column].Id));
        var setUps = problem.Columns
            .Select(column => dictionary.Checks[column].SetUp)
            .Distinct()
            .ToDictionary(setUp => setUp, setUp => model.NewBoolVar(setUp), StringComparer.Ordinal);
        foreach (var row in problem.Rows)
            model.AddBoolOr(row.Select(column => (ILiteral)taken[column]));
        foreach (var column in problem.Columns)
            model.AddImplication(taken[column], setUps[dictionary.Checks[column].SetUp]);
        foreach (var column in problem.Columns)
            model.AddHint(taken[column], start.Contains(column) ? 1 : 0);

        var costs = taken.Select(pair => (Variable: pair.Value, Cost: Units(dictionary.Checks[pair.Key].CostSeconds)))
            .Concat(dictionary.SetUps.Where(setUp => setUps.ContainsKey(setUp.Id)).Select(setUp => (Variable: setUps[setUp.Id], Cost: Units(setUp.CostSeconds))))
            .ToArray();
        model.Minimize(LinearExpr.WeightedSum([.. costs.Select(cost => cost.Variable)], [.. costs.Select(cost => cost.Cost)]));

        var solver = new CpSolver
        {
            StringParameters = FormattableString.Invariant($"max_deterministic_time:{DeterministicSeconds} num_workers:1 random_seed:1 linearization_level:2"),
        };
        var status = solver.Solve(model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? ([.. problem.Columns.Where(column => solver.BooleanValue(taken[column]))], solver.BestObjectiveBound / UnitsASecond)
            : null;
    }

    private static long Units(double seconds) => (long)Math.Round(seconds * UnitsASecond);
}
