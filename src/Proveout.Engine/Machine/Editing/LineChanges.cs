namespace Proveout.Engine.Machine;

/// <summary>Which lines differ between two texts: those that are not on a longest common subsequence.</summary>
internal static class LineChanges
{
    // Cells of the table; beyond, what differs counts as one piece, which is never wrong, only coarse.
    private const long LargestTable = 4_000_000;

    public static IReadOnlyList<LineChange> Between(string[] before, string[] after)
    {
        var head = 0;
        while (head < before.Length && head < after.Length && before[head] == after[head])
            head++;
        var tail = 0;
        while (tail < before.Length - head && tail < after.Length - head && before[^(tail + 1)] == after[^(tail + 1)])
            tail++;
        var (old, changed) = (before[head..^tail], after[head..^tail]);
        if (old.Length == 0 && changed.Length == 0)
            return [];
        return (long)old.Length * changed.Length > LargestTable ? [new(head, head + old.Length, [.. changed])] : Walk(old, changed, LengthsOf(old, changed), head);
    }

    private static List<LineChange> Walk(string[] before, string[] after, int[,] lengths, int head)
    {
        var changes = new List<LineChange>();
        var (left, right) = (0, 0);
        while (left < before.Length || right < after.Length)
        {
            var (start, first) = (left, right);
            while (!(left < before.Length && right < after.Length && before[left] == after[right]) && (left < before.Length || right < after.Length))
                if (right == after.Length || (left < before.Length && lengths[left + 1, right] >= lengths[left, right + 1]))
                    left++;
                else
                    right++;
            if (left > start || right > first)
                changes.Add(new(head + start, head + left, [.. after[first..right]]));
            while (left < before.Length && right < after.Length && before[left] == after[right])
                (left, right) = (left + 1, right + 1);
        }

        return changes;
    }

    // Length of the longest common subsequence of what is left from each pair of lines on.
    private static int[,] LengthsOf(string[] before, string[] after)
    {
        var lengths = new int[before.Length + 1, after.Length + 1];
        for (var left = before.Length - 1; left >= 0; left--)
            for (var right = after.Length - 1; right >= 0; right--)
                lengths[left, right] = before[left] == after[right]
                    ? lengths[left + 1, right + 1] + 1
                    : Math.Max(lengths[left + 1, right], lengths[left, right + 1]);
        return lengths;
    }
}
