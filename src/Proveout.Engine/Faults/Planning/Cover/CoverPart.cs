namespace Proveout.Engine.Faults;

/// <summary>A part of a cover that shares no column and no undecided set-up with any other, so that it can be solved alone.</summary>
/// <param name="Rows">Its rows.</param>
/// <param name="Columns">Its columns, rising.</param>
/// <param name="SetUps">The set-ups of its columns that are not certainly used, rising.</param>
internal sealed record CoverPart(int[][] Rows, int[] Columns, int[] SetUps)
{
    /// <summary>Splits a cover.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="reduced">What is left of it.</param>
    /// <param name="bySetUps">False to split as if every set-up were decided; only to see what they couple.</param>
    public static IReadOnlyList<CoverPart> Of(CoverProblem problem, ReducedCover reduced, bool bySetUps = true)
    {
        var groups = new JoinedGroups(problem.Columns.Length + problem.SetUpUnits.Length);
        foreach (var row in reduced.Rows)
            foreach (var column in row)
            {
                groups.Join(row[0], column);
                if (bySetUps && !reduced.UsedSetUps[problem.Columns[column].SetUp])
                    groups.Join(column, problem.Columns.Length + problem.Columns[column].SetUp);
            }

        return [.. reduced.Rows.GroupBy(row => groups.Of(row[0])).Select(rows => Of(problem, reduced, [.. rows]))];
    }

    /// <summary>All that is left as one part.</summary>
    public static CoverPart Whole(CoverProblem problem, ReducedCover reduced) => Of(problem, reduced, reduced.Rows);

    private static CoverPart Of(CoverProblem problem, ReducedCover reduced, int[][] rows)
    {
        int[] columns = [.. rows.SelectMany(row => row).Distinct().Order()];
        return new(rows, columns, [.. columns.Select(column => problem.Columns[column].SetUp).Where(setUp => !reduced.UsedSetUps[setUp]).Distinct().Order()]);
    }

    /// <summary>Cost of some of its columns, with those undecided set-ups that they need.</summary>
    public long Units(CoverProblem problem, IReadOnlyCollection<int> columns) =>
        columns.Sum(column => problem.Columns[column].Units)
        + SetUps.Where(setUp => columns.Any(column => problem.Columns[column].SetUp == setUp)).Sum(setUp => problem.SetUpUnits[setUp]);
}
