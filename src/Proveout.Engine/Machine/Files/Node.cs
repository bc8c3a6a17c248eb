namespace Proveout.Engine.Machine;

/// <summary>A piece of a YAML file, with its place.</summary>
/// <param name="place">Where it begins.</param>
internal abstract class Node(SourcePlace place)
{
    public SourcePlace Place => place;

    /// <summary>Where it stands in the text; empty for a node that was not read.</summary>
    public TextSpan Span { get; init; }

    /// <summary>The key that this node is the value of; null for the items of a list and for the whole file.</summary>
    public ScalarNode? Key { get; set; }

    /// <summary>The name that this node has by its key; empty when it has none.</summary>
    public string Name => Key?.Text ?? "";

    /// <summary>Where a person looks for this node: its key when it has one.</summary>
    public SourcePlace NamePlace => Key?.Place ?? Place;

    /// <summary>What kind of thing this is, for messages.</summary>
    public abstract string Kind { get; }

    /// <summary>The node under a key, or null.</summary>
    public virtual Node? Find(string key) => null;

    /// <summary>The node under a key, or this node itself when there is no such key: the nearest place to point at.</summary>
    public Node Under(string key) => Find(key) ?? this;

    /// <summary>The item with a number, or this node itself when there is none.</summary>
    public virtual Node Item(int index) => this;
}

/// <summary>One piece of text.</summary>
internal sealed class ScalarNode(SourcePlace place, string text, bool plain) : Node(place)
{
    public string Text => text;

    /// <summary>True when it stands without quotes, so that it may mean nothing, a number or a truth value.</summary>
    public bool Plain => plain;

    public bool IsNothing => plain && text is "" or "~" or "null" or "Null" or "NULL";

    public override string Kind => IsNothing ? "nothing" : Quote.Of(text);
}

/// <summary>Keys and their values, in file order; a key may stand twice.</summary>
internal sealed class MappingNode(SourcePlace place, IReadOnlyList<Node> entries) : Node(place)
{
    /// <summary>True when it stands in braces, false when its keys stand on lines of their own.</summary>
    public bool InBraces { get; init; }

    // Up to here a walk is as quick as an index.
    private const int FewEntries = 12;

    private Dictionary<string, Node>? _index;

    /// <summary>The values; each knows its key.</summary>
    public IReadOnlyList<Node> Entries => entries;

    public override string Kind => "a mapping of keys to values";

    public override Node? Find(string key) =>
        entries.Count <= FewEntries ? entries.FirstOrDefault(entry => entry.Name == key) : (_index ??= ToIndex()).GetValueOrDefault(key);

    private Dictionary<string, Node> ToIndex()
    {
        var index = new Dictionary<string, Node>(entries.Count, StringComparer.Ordinal);
        foreach (var entry in entries)
            index.TryAdd(entry.Name, entry);
        return index;
    }
}

/// <summary>A list of nodes.</summary>
internal sealed class ListNode(SourcePlace place, IReadOnlyList<Node> items) : Node(place)
{
    public IReadOnlyList<Node> Items => items;

    /// <summary>True when it stands in brackets, false when its items stand on lines of their own.</summary>
    public bool InBrackets { get; init; }

    public override string Kind => "a list";

    public override Node Item(int index) => index < items.Count ? items[index] : this;
}
