namespace Proveout.Engine.Faults;

/// <summary>Chooses checks one by one, each time the one that catches most still uncaught faults a second.</summary>
/// <remarks>At most H(n) times the cheapest plan (Chvátal, Mathematics of Operations Research 4 (1979) 233-235), not counting set-ups.</remarks>
internal static class GreedyCover
{
    /// <summary>Chooses checks that satisfy every row.</summary>
    public static List<int> Choose(FaultDictionary dictionary, CoverProblem problem)
    {
        var setUpCost = dictionary.SetUps.ToDictionary(setUp => setUp.Id, setUp => setUp.CostSeconds, StringComparer.Ordinal);
        var rowsOf = new Dictionary<int, List<int>>();
        for (var row = 0; row < problem.Rows.Length; row++)
            foreach (var column in problem.Rows[row])
                (rowsOf.TryGetValue(column, out var list) ? list : rowsOf[column] = []).Add(row);

        var open = new bool[problem.Rows.Length];
        Array.Fill(open, true);
        var usedSetUps = new HashSet<string>(StringComparer.Ordinal);
        List<int> chosen = [];
        while (open.Contains(true))
        {
            var best = problem.Columns.MaxBy(column => Worth(column));
            chosen.Add(best);
            usedSetUps.Add(dictionary.Checks[best].SetUp);
            foreach (var row in rowsOf[best])
                open[row] = false;
        }

        return [.. WithoutSuperfluous(chosen, problem).Order()];

        double Worth(int column)
        {
            var check = dictionary.Checks[column];
            var cost = check.CostSeconds + (usedSetUps.Contains(check.SetUp) ? 0 : setUpCost[check.SetUp]);
            return rowsOf[column].Count(row => open[row]) / cost;
        }
    }

    private static List<int> WithoutSuperfluous(List<int> chosen, CoverProblem problem)
    {
        var kept = chosen.ToHashSet();
        foreach (var column in chosen)
            if (Array.TrueForAll(problem.Rows, row => row.Any(other => other != column && kept.Contains(other))))
                kept.Remove(column);
        return [.. kept];
    }
}
