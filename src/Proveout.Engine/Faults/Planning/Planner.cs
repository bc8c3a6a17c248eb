namespace Proveout.Engine.Faults;

/// <summary>Chooses the checks of a plan.</summary>
public static class Planner
{
    /// <summary>Chooses the cheapest checks that surely catch every fault that any check surely catches.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="onlyGreedy">True to leave out the exact solver.</param>
    /// <param name="alsoCatch">Further demands: of each, at least one of the checks with these indices must be chosen.</param>
    /// <param name="mayUse">Which checks may be chosen, by index; all when null.</param>
    /// <exception cref="ArgumentException">A further demand names no check that may be chosen.</exception>
    public static PlanChoice Choose(
        FaultDictionary dictionary, bool onlyGreedy = false, IReadOnlyList<int[]>? alsoCatch = null, Func<int, bool>? mayUse = null)
    {
        var problem = CoverProblem.Of(dictionary, alsoCatch ?? [], mayUse ?? (_ => true));
        return problem.Rows.Length == 0 ? new PlanChoice([], 0, 0, "nothing to catch") : Choice(problem, new CoverSearch(problem, onlyGreedy).Solve());
    }

    private static PlanChoice Choice(CoverProblem problem, CoverSolution solution) => new(
        [.. solution.Columns.Select(column => problem.Columns[column].Check)],
        solution.Units / CoverProblem.UnitsASecond,
        Math.Min(solution.LowerUnits, solution.Units) / CoverProblem.UnitsASecond,
        solution.UsedSolver ? "exact cover by constraint programming" : solution.LowerUnits >= solution.Units ? "exact cover by reduction" : "greedy cover")
    {
        Size = solution.Size,
    };
}
