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
        if (problem.Rows.Length == 0)
            return new PlanChoice([], 0, 0, "nothing to catch");

        var greedy = GreedyCover.Choose(dictionary, problem);
        var exact = onlyGreedy ? null : TryExact(dictionary, problem, greedy);
        return exact is { } found && Cost(dictionary, found.Checks) <= Cost(dictionary, greedy)
            ? new PlanChoice(found.Checks, Cost(dictionary, found.Checks), found.LowerBoundSeconds, "exact cover by constraint programming")
            : new PlanChoice(greedy, Cost(dictionary, greedy), exact?.LowerBoundSeconds ?? TrivialBound(dictionary, problem), "greedy cover");
    }

    private static (List<int> Checks, double LowerBoundSeconds)? TryExact(FaultDictionary dictionary, CoverProblem problem, IReadOnlyList<int> start)
    {
        try
        {
            return ExactCover.Choose(dictionary, problem, start);
        }
        catch (Exception exception) when (exception is DllNotFoundException or TypeInitializationException or BadImageFormatException)
        {
            return null; // the solver's native library is not to be had on this system; the greedy plan covers the same faults
        }
    }

    private static double Cost(FaultDictionary dictionary, IReadOnlyList<int> checks)
    {
        var setUps = checks.Select(check => dictionary.Checks[check].SetUp).ToHashSet(StringComparer.Ordinal);
        return checks.Sum(check => dictionary.Checks[check].CostSeconds)
            + dictionary.SetUps.Where(setUp => setUps.Contains(setUp.Id)).Sum(setUp => setUp.CostSeconds);
    }

    // Rows without a check in common each need one of their own.
    private static double TrivialBound(FaultDictionary dictionary, CoverProblem problem)
    {
        var used = new HashSet<int>();
        var bound = 0.0;
        foreach (var row in problem.Rows.OrderBy(row => row.Length))
            if (!row.Any(used.Contains))
            {
                used.UnionWith(row);
                bound += row.Min(column => dictionary.Checks[column].CostSeconds);
            }

        return bound;
    }
}
