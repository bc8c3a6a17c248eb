namespace Proveout.Engine.Faults;

/// <summary>Chooses columns one by one, each time the one that satisfies most still open rows a second; then leaves out what is not needed.</summary>
/// <remarks>At most H(n) times the cheapest (Chvátal, Mathematics of Operations Research 4 (1979) 233-235), not counting set-ups.</remarks>
internal sealed class GreedyCover
{
    private readonly CoverProblem _problem;
    private readonly CoverPart _part;
    private readonly Dictionary<int, List<int>> _rowsOf = [];
    private readonly HashSet<int> _paid = [];
    private readonly int[] _satisfiedBy;
    private readonly Dictionary<int, int> _opens;

    private GreedyCover(CoverProblem problem, CoverPart part)
    {
        (_problem, _part, _satisfiedBy) = (problem, part, new int[part.Rows.Length]);
        for (var row = 0; row < part.Rows.Length; row++)
            foreach (var column in part.Rows[row])
                (_rowsOf.TryGetValue(column, out var list) ? list : _rowsOf[column] = []).Add(row);
        _opens = _rowsOf.ToDictionary(pair => pair.Key, pair => pair.Value.Count);
    }

    /// <summary>Solves a part; the lower bound counts rows that have no column in common.</summary>
    public static PartSolution Solve(CoverProblem problem, CoverPart part)
    {
        var columns = new GreedyCover(problem, part).Choose();
        return new PartSolution(columns, part.Units(problem, columns), CountingBound(problem, part));
    }

    private List<int> Choose()
    {
        List<int> chosen = [];
        for (var open = _part.Rows.Length; open > 0;)
        {
            var best = _part.Columns.MaxBy(Worth);
            chosen.Add(best);
            _paid.Add(_problem.Columns[best].SetUp);
            open -= _opens[best];
            foreach (var row in _rowsOf[best])
                if (_satisfiedBy[row]++ == 0)
                    foreach (var column in _part.Rows[row])
                        _opens[column]--;
        }

        return [.. chosen.Except(Superfluous(chosen)).Order()];
    }

    private double Worth(int column)
    {
        var setUp = _problem.Columns[column].SetUp;
        var cost = _problem.Columns[column].Units + (_part.SetUps.Contains(setUp) && !_paid.Contains(setUp) ? _problem.SetUpUnits[setUp] : 0);
        return _opens[column] / Math.Max(cost, 1e-3);
    }

    private IEnumerable<int> Superfluous(List<int> chosen)
    {
        foreach (var column in chosen.OrderByDescending(column => _problem.Columns[column].Units).ToArray())
        {
            if (!_rowsOf[column].TrueForAll(row => _satisfiedBy[row] > 1))
                continue;
            foreach (var row in _rowsOf[column])
                _satisfiedBy[row]--;
            yield return column;
        }
    }

    // Rows without a column in common each need one of their own.
    private static long CountingBound(CoverProblem problem, CoverPart part)
    {
        var seen = new HashSet<int>();
        var bound = 0L;
        foreach (var row in part.Rows.OrderBy(row => row.Length))
            if (!Array.Exists(row, seen.Contains))
            {
                seen.UnionWith(row);
                bound += row.Min(column => problem.Columns[column].Units);
            }

        return bound;
    }
}
