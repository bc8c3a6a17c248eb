namespace Proveout.Engine.Machine;

/// <summary>Merges two changes of one text, line by line.</summary>
/// <remarks>Three-way merge; S. Khanna, K. Kunal, B. C. Pierce, "A Formal Investigation of Diff3", FSTTCS 2007 (from memory).</remarks>
internal static class LineMerge
{
    /// <summary>The text with both changes; null when both changed the same lines, each otherwise.</summary>
    public static string? Of(string common, string mine, string theirs)
    {
        if (mine == common || mine == theirs)
            return theirs;
        if (theirs == common)
            return mine;
        var lines = Lines(common);
        var (left, right) = (LineChanges.Between(lines, Lines(theirs)), LineChanges.Between(lines, Lines(mine)));
        var merged = new List<string>(lines.Length);
        var at = 0;
        foreach (var change in Unite([.. left.Concat(right).OrderBy(change => change.Start).ThenBy(change => change.End)]))
        {
            if (change is null || change.Start < at)
                return null;
            merged.AddRange(lines[at..change.Start]);
            merged.AddRange(change.Lines);
            at = change.End;
        }

        merged.AddRange(lines[at..]);
        return string.Concat(merged);
    }

    // Two changes at one place are one when they are equal, stand one behind the other when both only add, and else cannot be both.
    private static IEnumerable<LineChange?> Unite(List<LineChange> changes)
    {
        for (var at = 0; at < changes.Count; at++)
        {
            var change = changes[at];
            if (at + 1 == changes.Count || changes[at + 1].Start != change.Start)
                yield return change;
            else if (changes[at + 1].End != change.Start || change.End != change.Start)
                yield return changes[at + 1].Equals(change) ? changes[++at] : null;
            else
                yield return new(change.Start, change.End, changes[++at].Lines.Equals(change.Lines) ? change.Lines : [.. change.Lines, .. changes[at].Lines]);
        }
    }

    // Each line with its break; a last line without one gets none.
    private static string[] Lines(string text)
    {
        var lines = new List<string>();
        for (var at = 0; at < text.Length;)
        {
            var end = text.IndexOf('\n', at) is >= 0 and var found ? found + 1 : text.Length;
            lines.Add(text[at..end]);
            at = end;
        }

        return [.. lines];
    }
}
