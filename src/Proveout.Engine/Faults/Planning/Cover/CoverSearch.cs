namespace Proveout.Engine.Faults;

/// <summary>Solves a cover: reduce, split into parts, solve each part, add up costs and bounds.</summary>
/// <remarks>
/// A set-up that is not certainly used couples all parts with a check in it. Up to a few such set-ups the cover is solved once with the set-up
/// used and once without; the better one is the solution, and the lesser bound is the bound. What is coupled beyond that stays one part.
/// </remarks>
internal sealed class CoverSearch(CoverProblem problem, bool onlyGreedy, bool split = true)
{
    private const int MostBranches = 4;

    // Deterministic seconds of the solver: altogether, and at least for each part.
    private const double AllWork = 24;
    private const double LeastWork = 0.5;
    private const double MostWork = 8;

    /// <summary>Solves the whole problem.</summary>
    public CoverSolution Solve()
    {
        var reduced = CoverReduction.Of(problem, problem.Rows, new bool[problem.SetUpUnits.Length]);
        return Solve(reduced, [], 0);
    }

    private CoverSolution Solve(ReducedCover reduced, IReadOnlyList<int> taken, int depth)
    {
        int[] decided = [.. taken, .. reduced.Taken];
        if (split && depth < MostBranches && MostCouplingSetUp(reduced) is { } setUp)
            return Branch(reduced, decided, setUp, depth);

        IReadOnlyList<CoverPart> parts = split || reduced.Rows.Length == 0 ? CoverPart.Of(problem, reduced) : [CoverPart.Whole(problem, reduced)];
        var work = Math.Clamp(AllWork / Math.Max(parts.Count, 1), LeastWork, MostWork);
        var solved = parts.AsParallel().AsOrdered().Select(part => SolvePart(part, work)).ToArray();
        return Together(reduced, decided, parts, solved);
    }

    private CoverSolution Together(ReducedCover reduced, int[] decided, IReadOnlyList<CoverPart> parts, (PartSolution Solution, bool UsedSolver)[] solved)
    {
        int[] columns = [.. decided.Concat(solved.SelectMany(part => part.Solution.Columns)).Order()];
        var certain = decided.Sum(column => problem.Columns[column].Units)
            + reduced.UsedSetUps.Index().Where(item => item.Item).Sum(item => problem.SetUpUnits[item.Index]);
        var size = new CoverSize(
            problem.Rows.Length,
            problem.Candidates,
            problem.Columns.Length,
            decided.Length,
            reduced.Rows.Length,
            parts.Sum(part => part.Columns.Length),
            parts.Count,
            solved.Count(part => part.Solution.LowerUnits >= part.Solution.Units));
        return new CoverSolution(
            columns,
            problem.Units(columns),
            certain + solved.Sum(part => part.Solution.LowerUnits),
            size,
            Array.Exists(solved, part => part.UsedSolver));
    }

    private (PartSolution Solution, bool UsedSolver) SolvePart(CoverPart part, double work)
    {
        var greedy = GreedyCover.Solve(problem, part);
        if (onlyGreedy || greedy.LowerUnits >= greedy.Units)
            return (greedy, false);
        try
        {
            return (ExactCover.Improve(problem, part, greedy, work), true);
        }
        catch (Exception exception) when (exception is DllNotFoundException or TypeInitializationException or BadImageFormatException)
        {
            return (greedy, false); // the solver's native library is not to be had on this system; the greedy choice catches the same faults
        }
    }

    // The undecided set-up whose decision would set most parts free; null when none couples any.
    private int? MostCouplingSetUp(ReducedCover reduced)
    {
        var loose = CoverPart.Of(problem, reduced, bySetUps: false);
        var counts = loose.SelectMany(part => part.SetUps).CountBy(setUp => setUp).Where(pair => pair.Value > 1).ToArray();
        return counts.Length == 0 ? null : counts.OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key).First().Key;
    }

    private CoverSolution Branch(ReducedCover reduced, int[] decided, int setUp, int depth)
    {
        bool[] used = [.. reduced.UsedSetUps];
        used[setUp] = true;
        var with = Solve(CoverReduction.Of(problem, reduced.Rows, used), decided, depth + 1);
        int[][] rows = [.. reduced.Rows.Select(row => row.Where(column => problem.Columns[column].SetUp != setUp).ToArray())];
        if (Array.Exists(rows, row => row.Length == 0))
            return with;
        var without = Solve(CoverReduction.Of(problem, rows, reduced.UsedSetUps), decided, depth + 1);
        var better = without.Units < with.Units ? without : with;
        return better with { LowerUnits = Math.Min(with.LowerUnits, without.LowerUnits), UsedSolver = with.UsedSolver || without.UsedSolver };
    }
}
