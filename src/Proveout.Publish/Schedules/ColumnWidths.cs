namespace Proveout.Publish.Schedules;

/// <summary>Widths of the columns of a table on paper.</summary>
public static class ColumnWidths
{
    /// <summary>By their shares, but none narrower than its floor; by their shares alone when the floors do not fit together.</summary>
    /// <param name="shares">Their shares.</param>
    /// <param name="floors">Least widths, in the unit of the whole.</param>
    /// <param name="whole">Width of the table.</param>
    public static double[] Of(double[] shares, double[] floors, double whole)
    {
        if (floors.Sum() >= whole)
            return [.. shares.Select(share => whole * share / shares.Sum())];
        var isAtFloor = new bool[shares.Length];
        while (true)
        {
            var left = whole - floors.Where((_, at) => isAtFloor[at]).Sum();
            var sum = shares.Where((_, at) => !isAtFloor[at]).Sum();
            double[] widths = [.. shares.Select((share, at) => isAtFloor[at] ? floors[at] : left * share / sum)];
            int[] narrow = [.. Enumerable.Range(0, shares.Length).Where(at => !isAtFloor[at] && widths[at] < floors[at])];
            if (narrow.Length == 0)
                return widths;
            foreach (var at in narrow)
                isAtFloor[at] = true;
        }
    }
}
