using System.Collections;

namespace Proveout.Engine.Faults;

/// <summary>Which checks catch which faults, cut down to what still has to be decided.</summary>
/// <remarks>
/// Rows that ask for the same checks are one; a row that asks for all the checks of another, and more, follows from that other; a check that
/// catches no more than another one of the same set-up at no less cost is never needed. These reductions keep an optimal plan
/// (Garfinkel and Nemhauser, Integer Programming, 1972, chapter 8).
/// </remarks>
internal sealed class CoverProblem
{
    private CoverProblem(int[][] rows, int[] columns) => (Rows, Columns) = (rows, columns);

    /// <summary>Each row: indices of the checks of which one must be in the plan.</summary>
    public int[][] Rows { get; }

    /// <summary>Indices of the checks that are worth considering, rising.</summary>
    public int[] Columns { get; }

    /// <summary>Makes the problem of catching every fault that some check surely catches.</summary>
    public static CoverProblem Of(FaultDictionary dictionary, IReadOnlyList<int[]> alsoCatch, Func<int, bool> mayUse)
    {
        var rows = Enumerable.Range(0, dictionary.Faults.Count)
            .Select(fault => dictionary.ChecksThatCatch(fault).Where(mayUse).ToArray())
            .Where(row => row.Length > 0)
            .Concat(alsoCatch.Select(row => AtLeastOne(row, mayUse)))
            .DistinctBy(row => string.Join(',', row))
            .ToArray();
        for (var again = true; again;)
        {
            var before = rows.Length;
            rows = WithoutImpliedRows(rows);
            rows = WithoutDominatedColumns(dictionary, rows);
            again = rows.Length < before;
        }

        return new CoverProblem(rows, [.. rows.SelectMany(row => row).Distinct().Order()]);
    }

    private static int[] AtLeastOne(int[] row, Func<int, bool> mayUse)
    {
        int[] usable = [.. row.Where(mayUse).Distinct().Order()];
        return usable.Length > 0 ? usable : throw new ArgumentException("A plan cannot hold one of no checks.", nameof(row));
    }

    private static int[][] WithoutImpliedRows(int[][] rows)
    {
        var sets = rows.Select(row => row.ToHashSet()).ToArray();
        var order = Enumerable.Range(0, rows.Length).OrderBy(row => rows[row].Length).ToArray();
        var kept = new List<int>();
        foreach (var row in order)
            if (!kept.Any(smaller => Array.TrueForAll(rows[smaller], sets[row].Contains)))
                kept.Add(row);
        return [.. kept.Order().Select(row => rows[row])];
    }

    private static int[][] WithoutDominatedColumns(FaultDictionary dictionary, int[][] rows)
    {
        var rowsOf = new Dictionary<int, BitArray>();
        for (var row = 0; row < rows.Length; row++)
            foreach (var column in rows[row])
                (rowsOf.TryGetValue(column, out var bits) ? bits : rowsOf[column] = new BitArray(rows.Length))[row] = true;

        var removed = new HashSet<int>();
        var candidates = rowsOf.OrderByDescending(pair => pair.Value.Cast<bool>().Count(bit => bit)).ThenBy(pair => pair.Key).ToArray();
        foreach (var group in candidates.GroupBy(pair => dictionary.Checks[pair.Key].SetUp))
        {
            var kept = new List<KeyValuePair<int, BitArray>>();
            foreach (var candidate in group)
                if (kept.Any(better => Dominates(dictionary, better, candidate)))
                    removed.Add(candidate.Key);
                else
                    kept.Add(candidate);
        }

        return [.. rows.Select(row => row.Where(column => !removed.Contains(column)).ToArray()).DistinctBy(row => string.Join(',', row))];
    }

    private static bool Dominates(FaultDictionary dictionary, KeyValuePair<int, BitArray> better, KeyValuePair<int, BitArray> candidate)
    {
        if (dictionary.Checks[better.Key].CostSeconds > dictionary.Checks[candidate.Key].CostSeconds)
            return false;
        var missing = new BitArray(better.Value).Not().And(candidate.Value);
        return !missing.HasAnySet();
    }
}
