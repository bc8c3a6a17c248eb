namespace Proveout.Engine.Faults;

/// <summary>Adds checks to a plan until every row has one.</summary>
public static class PlanGrowth
{
    /// <summary>The checks to add, rising: each time the one that serves most rows a second (Chvátal, Mathematics of Operations Research 4 (1979) 233-235).</summary>
    /// <param name="dictionary">The checks.</param>
    /// <param name="planned">Indices of the checks that are planned already.</param>
    /// <param name="rows">Each row: indices of the checks of which one must be in the plan; none empty.</param>
    public static IReadOnlyList<int> Choose(FaultDictionary dictionary, IEnumerable<int> planned, IReadOnlyList<int[]> rows)
    {
        var plan = planned.ToHashSet();
        var open = rows.Where(row => !row.Any(plan.Contains)).ToList();
        List<int> added = [];
        while (open.Count > 0)
        {
            var counts = open.SelectMany(row => row).GroupBy(check => check);
            var best = counts.OrderByDescending(group => group.Count() / dictionary.Checks[group.Key].CostSeconds).ThenBy(group => group.Key).First().Key;
            added.Add(best);
            open.RemoveAll(row => row.Contains(best));
        }

        return [.. added.Order()];
    }
}
