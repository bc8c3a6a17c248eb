namespace Proveout.Engine.Machine;

/// <summary>Finds what a person meant to write.</summary>
internal static class Spelling
{
    // All sections of a machine file, and a few more; a longer list helps no one in a sentence.
    private const int LongestList = 20;

    // Nobody mistypes a longer word; it is rubbish, and comparing it would take long.
    private const int LongestWord = 100;

    /// <summary>One sentence: the nearest valid spelling, or all of them when they are few.</summary>
    /// <param name="wrong">What was written.</param>
    /// <param name="valid">The valid spellings, each once.</param>
    public static string Hint(string wrong, IReadOnlyCollection<string> valid) => (Nearest(wrong, valid), valid.Count) switch
    {
        ({ } nearest, _) => $"Did you mean {Quote.Of(nearest)}?",
        (_, 0) => "There is none to choose from.",
        (_, 1) => $"The only valid one is {Quote.Of(valid.First())}.",
        (_, <= LongestList) => $"Valid are {string.Join(", ", valid.SkipLast(1).Select(Quote.Of))} and {Quote.Of(valid.Last())}.",
        _ => $"None of the {valid.Count} valid ones is spelled like it.",
    };

    /// <summary>The valid spelling with the fewest slips of the pen, or null when none is near.</summary>
    public static string? Nearest(string wrong, IEnumerable<string> valid)
    {
        if (wrong.Length > LongestWord)
            return null;
        if (valid.FirstOrDefault(candidate => candidate.Equals(wrong, StringComparison.OrdinalIgnoreCase)) is { } otherCase)
            return otherCase;
        string? nearest = null;
        // Letter case aside, one slip in three letters is near; a single letter has no near neighbour but its other case.
        var fewest = wrong.Length / 3;
        foreach (var candidate in valid)
        {
            if (Math.Abs(candidate.Length - wrong.Length) > fewest)
                continue;
            var slips = Distance(wrong, candidate, fewest);
            if (slips < fewest || (slips == fewest && nearest is null))
                (nearest, fewest) = (candidate, slips);
            if (nearest is not null && fewest == 1)
                return nearest;
        }

        return nearest;
    }

    /// <summary>
    /// Slips between two words, letter case aside: letters left out, put in, changed, or two neighbours swapped (optimal string alignment,
    /// the restricted Damerau–Levenshtein distance). Words of at most 150 letters; any number above the limit once that is passed.
    /// </summary>
    public static int Distance(string left, string right, int limit)
    {
        var width = right.Length + 1;
        Span<int> rows = stackalloc int[3 * width];
        for (var column = 0; column < width; column++)
            rows[column] = column;
        for (var line = 1; line <= left.Length; line++)
        {
            var row = rows.Slice(line % 3 * width, width);
            var least = FillRow(
                left,
                line,
                right,
                row,
                rows.Slice((line + 2) % 3 * width, width),
                rows.Slice((line + 1) % 3 * width, width));
            // One row may be passed over by a swap, so the way out is two slips above the limit.
            if (least > limit + 1)
                return least;
        }

        return rows[left.Length % 3 * width + right.Length];
    }

    private static int FillRow(string left, int line, string right, Span<int> row, ReadOnlySpan<int> above, ReadOnlySpan<int> before)
    {
        row[0] = line;
        var least = line;
        for (var column = 1; column < row.Length; column++)
        {
            var changed = Same(left[line - 1], right[column - 1]) ? 0 : 1;
            var slips = Math.Min(Math.Min(above[column], row[column - 1]) + 1, above[column - 1] + changed);
            if (line > 1 && column > 1 && Same(left[line - 1], right[column - 2]) && Same(left[line - 2], right[column - 1]))
                slips = Math.Min(slips, before[column - 2] + 1);
            row[column] = slips;
            least = Math.Min(least, slips);
        }

        return least;
    }

    private static bool Same(char left, char right) => left == right || char.ToUpperInvariant(left) == char.ToUpperInvariant(right);
}
