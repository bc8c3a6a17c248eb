namespace Proveout.Engine.Machine;

/// <summary>One machine file with its tree, changed by splicing its text, so that comments, order and layout survive.</summary>
/// <remarks>
/// Every change is proved: the new text is read, and its tree must be the old tree with just that change. A text whose layout defeats the
/// splice is left as it is.
/// </remarks>
internal sealed class EditedFile(SourceText source, MappingNode root)
{
    public SourceText Source => source;

    public MappingNode Root => root;

    /// <summary>The file; null, with a problem added, when its text cannot be read or is no mapping.</summary>
    public static EditedFile? Parse(SourceText source, Problems problems)
    {
        var root = NodeReader.Read(source, problems);
        if (root is not null and not MappingNode)
            problems.Add("wrong-type", root.Place, $"A machine file should be sections with their names, but it is {root.Kind}.", "Begin it with its format.");
        return root is MappingNode mapping ? new(source, mapping) : null;
    }

    /// <summary>Where a thing stands; the file when it does not.</summary>
    public SourcePlace PlaceOf(EditedThing thing) => root.Find(thing.Section)?.Find(thing.Name)?.NamePlace ?? new(source.File, 0, 0);

    /// <summary>The file with another value at a path of keys, or with nothing there; null when the text cannot be spliced.</summary>
    public EditedFile? Set(ReadOnlySpan<string> path, Node? value)
    {
        var wanted = TreeEdits.Set(root, path, value);
        return TextSplice.Set(source.Text, root, path, value) is { } text ? Proved(text, wanted) : null;
    }

    /// <summary>The file with other words for some texts of its tree; null when the text cannot be spliced.</summary>
    public EditedFile? Reword(IReadOnlyDictionary<ScalarNode, string> words)
    {
        var text = source.Text;
        foreach (var (node, word) in words.OrderByDescending(pair => pair.Key.Span.Start))
            text = text[..node.Span.Start] + ScalarText.Of(word) + text[node.Span.End..];
        return Proved(text, (MappingNode)TreeEdits.Reword(root, words));
    }

    private EditedFile? Proved(string text, MappingNode wanted)
    {
        var problems = new Problems();
        var changed = Parse(source with { Text = text }, problems);
        return changed is not null && !problems.Any && NodeWriter.OnOneLine(changed.Root) == NodeWriter.OnOneLine(wanted) ? changed : null;
    }
}
