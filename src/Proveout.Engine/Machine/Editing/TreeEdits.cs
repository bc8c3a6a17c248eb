namespace Proveout.Engine.Machine;

/// <summary>Changes trees: what the text must read as after a change.</summary>
internal static class TreeEdits
{
    /// <summary>The mapping with another value at a path of keys, or with nothing there and no mapping left empty.</summary>
    public static MappingNode Set(MappingNode at, ReadOnlySpan<string> path, Node? value)
    {
        var name = path[0];
        var old = at.Find(name);
        var child = path.Length == 1 ? value : Set(old as MappingNode ?? new MappingNode(default, []), path[1..], value);
        if (child is MappingNode { Entries.Count: 0 } && value is null)
            child = null;
        if (child is not null)
            child.Key ??= old?.Key ?? new ScalarNode(default, name, plain: false);
        var entries = at.Entries.ToList();
        var place = old is null ? -1 : entries.IndexOf(old);
        if (place >= 0)
            entries.RemoveAt(place);
        if (child is not null)
            entries.Insert(place >= 0 ? place : entries.Count, child);
        return new(at.Place, entries) { Key = at.Key };
    }

    /// <summary>The tree with other words for some of its texts, keys among them.</summary>
    public static Node Reword(Node node, IReadOnlyDictionary<ScalarNode, string> words)
    {
        Node changed = node switch
        {
            MappingNode mapping => new MappingNode(mapping.Place, [.. mapping.Entries.Select(entry => Reword(entry, words))]),
            ListNode list => new ListNode(list.Place, [.. list.Items.Select(item => Reword(item, words))]),
            ScalarNode scalar when words.TryGetValue(scalar, out var word) => new ScalarNode(scalar.Place, word, plain: false),
            ScalarNode scalar => new ScalarNode(scalar.Place, scalar.Text, scalar.Plain),
            _ => throw new InvalidOperationException($"No way to change {node.GetType()}."),
        };
        changed.Key = node.Key is null ? null : (ScalarNode)Reword(node.Key, words);
        return changed;
    }
}
