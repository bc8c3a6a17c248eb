namespace Proveout.Engine.Faults;

/// <summary>Cuts a cover down to what still has to be decided, and keeps a cheapest solution of the whole.</summary>
/// <remarks>
/// A row that asks for all the columns of another, and more, follows from that other. A column that satisfies no more than another one is never
/// needed when that other costs no more, its set-up included unless that is used anyway. A row with one column decides that column; a row
/// whose columns all lie in one set-up decides that set-up. Garfinkel and Nemhauser, Integer Programming, 1972, chapter 8; that the set-ups
/// take part is our own step, proved by exchange: put the better column in the place of the other, and no cost rises.
/// </remarks>
internal sealed class CoverReduction
{
    private readonly CoverProblem _problem;
    private readonly bool[] _usedSetUps;
    private readonly List<int> _taken = [];
    private int[][] _rows;

    private CoverReduction(CoverProblem problem, int[][] rows, bool[] usedSetUps) =>
        (_problem, _rows, _usedSetUps) = (problem, rows, [.. usedSetUps.Zip(problem.SetUpUnits, (used, units) => used || units == 0)]);

    /// <summary>Reduces some rows of a problem.</summary>
    /// <param name="problem">The whole problem.</param>
    /// <param name="rows">Its rows that are not yet satisfied.</param>
    /// <param name="usedSetUps">Set-ups that are used and paid for, by index.</param>
    public static ReducedCover Of(CoverProblem problem, int[][] rows, bool[] usedSetUps)
    {
        var reduction = new CoverReduction(problem, rows, usedSetUps);
        while (reduction.TakeEssentials() | reduction.DropImpliedRows() | reduction.DropDominatedColumns())
        {
            // Each step may make room for the others.
        }

        return new ReducedCover(reduction._rows, reduction._taken, reduction._usedSetUps);
    }

    private bool TakeEssentials()
    {
        var essential = _rows.Where(row => row.Length == 1).Select(row => row[0]).Distinct().Order().ToArray();
        foreach (var row in _rows)
            if (Array.TrueForAll(row, column => _problem.Columns[column].SetUp == _problem.Columns[row[0]].SetUp))
                _usedSetUps[_problem.Columns[row[0]].SetUp] = true;
        if (essential.Length == 0)
            return false;
        _taken.AddRange(essential);
        var taken = essential.ToHashSet();
        _rows = [.. _rows.Where(row => !Array.Exists(row, taken.Contains))];
        return true;
    }

    private bool DropImpliedRows()
    {
        var frequency = new int[_problem.Columns.Length];
        foreach (var row in _rows)
            foreach (var column in row)
                frequency[column]++;

        // A row that implies others is filed under its rarest column only: whatever it implies holds that column too.
        var filed = new Dictionary<int, List<int>>();
        var masks = _rows.Select(NumberSet.MaskOf).ToArray();
        var kept = new bool[_rows.Length];
        foreach (var row in Enumerable.Range(0, _rows.Length).OrderBy(row => _rows[row].Length))
        {
            if (Array.Exists(_rows[row], column => filed.TryGetValue(column, out var rows) && rows.Exists(smaller => IsWithin(smaller, row))))
                continue;
            kept[row] = true;
            var rarest = _rows[row].MinBy(column => frequency[column]);
            if (filed.TryGetValue(rarest, out var list))
                list.Add(row);
            else
                filed[rarest] = [row];
        }

        var before = _rows.Length;
        _rows = [.. _rows.Where((_, row) => kept[row])];
        return _rows.Length < before;

        bool IsWithin(int small, int large) => (masks[small] & ~masks[large]) == 0 && NumberSet.IsWithin(_rows[small], _rows[large]);
    }

    private bool DropDominatedColumns()
    {
        var rowsOf = Transposed.Of(_rows, _problem.Columns.Length);
        var masks = rowsOf.Select(NumberSet.MaskOf).ToArray();
        var dropped = new bool[rowsOf.Length];
        Parallel.For(0, rowsOf.Length, column => dropped[column] = rowsOf[column].Length > 0 && Array.Exists(RivalsOf(column), IsBetterThan(column)));
        if (!Array.Exists(dropped, drop => drop))
            return false;
        _rows = [.. _rows.Select(row => row.Where(column => !dropped[column]).ToArray())];
        return true;

        // Whatever dominates a column shares each of its rows, so also the shortest.
        int[] RivalsOf(int column) => _rows[rowsOf[column].MinBy(row => _rows[row].Length)];

        Predicate<int> IsBetterThan(int column) => rival =>
            rival != column
            && (masks[column] & ~masks[rival]) == 0
            && CostsNoMore(rival, column)
            && NumberSet.IsWithin(rowsOf[column], rowsOf[rival])
            && (rival < column || rowsOf[rival].Length > rowsOf[column].Length || !CostsNoMore(column, rival));
    }

    private bool CostsNoMore(int rival, int column)
    {
        var (one, two) = (_problem.Columns[rival], _problem.Columns[column]);
        var setUp = one.SetUp == two.SetUp || _usedSetUps[one.SetUp] ? 0 : _problem.SetUpUnits[one.SetUp];
        return one.Units + setUp <= two.Units;
    }
}
