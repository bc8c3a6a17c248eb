namespace Proveout.Engine.Machine;

/// <summary>Changes one place of a YAML text, and leaves every other character as it is.</summary>
internal static class TextSplice
{
    /// <summary>The text with another value at a path of keys, or with nothing there; null when its layout does not allow that.</summary>
    public static string? Set(string text, MappingNode root, ReadOnlySpan<string> path, Node? value)
    {
        List<Node> way = [root];
        while (way.Count <= path.Length && way[^1].Find(path[way.Count - 1]) is { } next)
            way.Add(next);
        if (way.Count > path.Length)
            return value is null ? Remove(text, way) : Replace(text, way[^1], value);
        return value is null ? text : Insert(text, way[^1], Wrapped(path[(way.Count - 1)..], value), isSection: way.Count == 1);
    }

    // What would be left empty goes too.
    private static string? Remove(string text, List<Node> way)
    {
        var at = way.Count - 1;
        while (at > 1 && way[at - 1] is MappingNode { Entries.Count: 1 })
            at--;
        if (way[at - 1] is not MappingNode parent)
            return null;
        if (parent.InBraces)
            return RemoveInBraces(text, parent, way[at]);
        var left = text;
        // From the bottom up, so that places above stay right; comments between the key of a section and its only entry stay.
        for (var lowest = way.FindLastIndex(node => node.Key is not null && way[way.IndexOf(node) - 1] is MappingNode { InBraces: false }); lowest >= at; lowest--)
            if (RemoveLines(left, way[lowest].Key!.Span.Start, lowest == way.Count - 1 || way[lowest] is MappingNode { InBraces: true } ? EndOf(way[lowest]) : way[lowest].Key!.Span.End) is { } next)
                left = next;
            else
                return null;
        return left;
    }

    private static string? RemoveInBraces(string text, MappingNode parent, Node entry)
    {
        var place = parent.Entries.ToList().IndexOf(entry);
        var (start, end) = place + 1 < parent.Entries.Count ? (entry.Key!.Span.Start, parent.Entries[place + 1].Key!.Span.Start)
            : place > 0 ? (EndOf(parent.Entries[place - 1]), EndOf(entry))
            : (entry.Key!.Span.Start, EndOf(entry));
        // A comment between two values belongs to nobody that could be told.
        return text.AsSpan(start, end - start).Contains(" #", StringComparison.Ordinal) ? null : Cut(text, start, end);
    }

    private static string? RemoveLines(string text, int key, int last)
    {
        var start = LineStart(text, key);
        if (!text.AsSpan(start, key - start).IsWhiteSpace())
            return null;
        var end = LineEnd(text, last);
        // A text whose last line has no break has none afterwards either.
        return end == text.Length && text[^1] != '\n' ? text[..start].TrimEnd('\n').TrimEnd('\r') : Cut(text, start, end);
    }

    private static string Replace(string text, Node old, Node value)
    {
        var (start, end) = (old.Span.Start, EndOf(old));
        var blank = start > 0 && text[start - 1] == ':' ? " " : "";
        return text[..start] + blank + NodeWriter.OnOneLine(value) + text[end..];
    }

    private static string? Insert(string text, Node parent, Node entry, bool isSection)
    {
        if (parent is ScalarNode { IsNothing: true })
            return Replace(text, parent, new MappingNode(default, [entry]));
        if (parent is not MappingNode mapping)
            return null;
        if (mapping.InBraces)
            return mapping.Entries.Count == 0
                ? Put(text, mapping.Span.Start + 1, InBraces(entry))
                : Put(text, EndOf(mapping.Entries[^1]), ", " + InBraces(entry));
        var last = mapping.Entries[^1];
        var indent = mapping.Entries[0].Key!.Span.Start - LineStart(text, mapping.Entries[0].Key!.Span.Start);
        var lines = NodeWriter.Entry(entry, indent, onLines: last is MappingNode { InBraces: false } && !isSection);
        var at = LineEnd(text, EndOf(last));
        var isOpen = at == text.Length && !text.EndsWith('\n');
        var added = isOpen ? "\n" + lines.TrimEnd('\n') : lines;
        return Put(text, at, text.Contains("\r\n", StringComparison.Ordinal) ? added.Replace("\n", "\r\n", StringComparison.Ordinal) : added);
    }

    private static Node Wrapped(ReadOnlySpan<string> path, Node value)
    {
        var node = path.Length == 1 ? value : new MappingNode(default, [Wrapped(path[1..], value)]);
        node.Key ??= new ScalarNode(default, path[0], plain: false);
        return node;
    }

    private static string InBraces(Node entry) => $"{NodeWriter.KeyOf(entry)}: {NodeWriter.OnOneLine(entry)}";

    // A mapping on lines of its own ends with the last thing in it; the parser would end it where the next one begins, comments between included.
    private static int EndOf(Node node) => node switch
    {
        MappingNode { InBraces: false, Entries: [.., var last] } => EndOf(last),
        ListNode { InBrackets: false, Items: [.., var last] } => EndOf(last),
        _ => Math.Max(node.Span.End, node.Key?.Span.End ?? 0),
    };

    private static string Cut(string text, int start, int end) => text[..start] + text[end..];

    private static string Put(string text, int at, string added) => text[..at] + added + text[at..];

    private static int LineStart(string text, int at) => at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1;

    private static int LineEnd(string text, int at) => text.IndexOf('\n', at) is >= 0 and var end ? end + 1 : text.Length;
}
