namespace Proveout.Engine.Machine;

/// <summary>Finds what a person meant to write.</summary>
internal static class Spelling
{
    // A longer list than this helps no one in a sentence.
    private const int LongestList = 12;

    // Nobody mistypes a longer word; it is rubbish, and comparing it would take long.
    private const int LongestWord = 100;

    /// <summary>One sentence: the nearest valid spelling, or all of them when they are few.</summary>
    public static string Hint(string wrong, IEnumerable<string> valid)
    {
        var known = valid.Distinct(StringComparer.Ordinal).ToList();
        if (Nearest(wrong, known) is { } nearest)
            return $"Did you mean {Quote.Of(nearest)}?";
        return known.Count switch
        {
            0 => "There is none to choose from.",
            1 => $"The only valid one is {Quote.Of(known[0])}.",
            <= LongestList => $"Valid are {string.Join(", ", known.SkipLast(1).Select(Quote.Of))} and {Quote.Of(known[^1])}.",
            _ => $"None of the {known.Count} valid ones is spelled like it.",
        };
    }

    /// <summary>The valid spelling with the fewest slips of the pen, or null when none is near.</summary>
    public static string? Nearest(string wrong, IEnumerable<string> valid)
    {
        if (wrong.Length > LongestWord)
            return null;
        string? nearest = null;
        // Letter case aside, one slip in three letters is near; a single letter has no near neighbour but its other case.
        var limit = wrong.Length / 3.0;
        foreach (var candidate in valid)
        {
            if (Math.Abs(candidate.Length - wrong.Length) > limit || Distance(wrong, candidate) is var slips && slips > limit)
                continue;
            if (slips == 0 && candidate == wrong)
                return candidate;
            if (nearest is null || slips < limit)
                (nearest, limit) = (candidate, slips);
        }

        return nearest;
    }

    /// <summary>
    /// Slips between two words, letter case aside: letters left out, put in, changed, or two neighbours swapped (optimal string alignment,
    /// the restricted Damerau–Levenshtein distance).
    /// </summary>
    public static int Distance(string left, string right)
    {
        var (before, above, row) = (new int[right.Length + 1], new int[right.Length + 1], new int[right.Length + 1]);
        for (var column = 0; column <= right.Length; column++)
            row[column] = column;
        for (var line = 1; line <= left.Length; line++)
        {
            (before, above, row) = (above, row, before);
            row[0] = line;
            for (var column = 1; column <= right.Length; column++)
            {
                var changed = Same(left[line - 1], right[column - 1]) ? 0 : 1;
                row[column] = Math.Min(Math.Min(above[column], row[column - 1]) + 1, above[column - 1] + changed);
                if (line > 1 && column > 1 && Same(left[line - 1], right[column - 2]) && Same(left[line - 2], right[column - 1]))
                    row[column] = Math.Min(row[column], before[column - 2] + 1);
            }
        }

        return row[right.Length];
    }

    private static bool Same(char left, char right) => char.ToUpperInvariant(left) == char.ToUpperInvariant(right);
}
