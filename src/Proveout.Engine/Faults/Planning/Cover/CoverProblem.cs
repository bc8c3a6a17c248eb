namespace Proveout.Engine.Faults;

/// <summary>Which checks catch which faults: rows of which each needs a column, columns and set-ups that cost time.</summary>
internal sealed class CoverProblem
{
    /// <summary>Units of cost in a second.</summary>
    public const double UnitsASecond = 1000;

    private CoverProblem(int[][] rows, CoverColumn[] columns, long[] setUpUnits, int candidates) =>
        (Rows, Columns, SetUpUnits, Candidates) = (rows, columns, setUpUnits, candidates);

    /// <summary>Each row: which columns satisfy it, rising. No two rows are equal.</summary>
    public int[][] Rows { get; }

    /// <summary>The columns, in the order of their checks.</summary>
    public CoverColumn[] Columns { get; }

    /// <summary>Cost of each set-up.</summary>
    public long[] SetUpUnits { get; }

    /// <summary>Number of checks that catch anything, before equal ones were merged.</summary>
    public int Candidates { get; }

    /// <summary>Makes the problem of catching every fault that some check surely catches.</summary>
    /// <param name="dictionary">What every check shows under every fault.</param>
    /// <param name="alsoCatch">Further rows, as indices of checks.</param>
    /// <param name="mayUse">Which checks may be chosen.</param>
    public static CoverProblem Of(FaultDictionary dictionary, IReadOnlyList<int[]> alsoCatch, Func<int, bool> mayUse)
    {
        var usable = Enumerable.Range(0, dictionary.Checks.Count).Select(mayUse).ToArray();
        var rows = Enumerable.Range(0, dictionary.Faults.Count)
            .AsParallel()
            .AsOrdered()
            .Select(fault => dictionary.ChecksThatCatch(fault).Where(check => usable[check]).ToArray())
            .Where(row => row.Length > 0)
            .AsEnumerable()
            .Concat(alsoCatch.Select(row => AtLeastOne(row, usable)))
            .Distinct(SameNumbers.Comparer)
            .ToArray();
        return OfRows(dictionary, rows);
    }

    /// <summary>Cost of some columns with the set-ups that they need.</summary>
    public long Units(IReadOnlyCollection<int> columns) =>
        columns.Sum(column => Columns[column].Units) + columns.Select(column => Columns[column].SetUp).Distinct().Sum(setUp => SetUpUnits[setUp]);

    private static CoverProblem OfRows(FaultDictionary dictionary, int[][] rows)
    {
        var setUps = dictionary.SetUps.Index().ToDictionary(item => item.Item.Id, item => item.Index, StringComparer.Ordinal);
        var rowsOf = Transposed.Of(rows, dictionary.Checks.Count);
        var classOf = new int[dictionary.Checks.Count];
        var known = new Dictionary<int[], List<int>>(SameNumbers.Comparer);
        List<CoverColumn> columns = [];
        for (var check = 0; check < classOf.Length; check++)
        {
            classOf[check] = -1;
            if (rowsOf[check].Length == 0)
                continue;
            var column = new CoverColumn(check, setUps[dictionary.Checks[check].SetUp], ToUnits(dictionary.Checks[check].CostSeconds));
            if (!known.TryGetValue(rowsOf[check], out var equals))
                known[rowsOf[check]] = equals = [];
            var twin = equals.FindIndex(index => columns[index].SetUp == column.SetUp && columns[index].Units == column.Units);
            if (twin >= 0)
                continue;
            classOf[check] = columns.Count;
            equals.Add(columns.Count);
            columns.Add(column);
        }

        return new CoverProblem(
            [.. rows.Select(row => row.Select(check => classOf[check]).Where(column => column >= 0).ToArray())],
            [.. columns],
            [.. dictionary.SetUps.Select(setUp => ToUnits(setUp.CostSeconds))],
            rowsOf.Count(list => list.Length > 0));
    }

    private static int[] AtLeastOne(int[] row, bool[] usable)
    {
        int[] left = [.. row.Where(check => usable[check]).Distinct().Order()];
        return left.Length > 0 ? left : throw new ArgumentException("A plan cannot hold one of no checks.", nameof(row));
    }

    private static long ToUnits(double seconds) => (long)Math.Round(seconds * UnitsASecond);
}
