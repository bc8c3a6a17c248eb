namespace Proveout.Engine.Machine;

/// <summary>Everything of one kind that several files name, with its places.</summary>
/// <typeparam name="T">The things.</typeparam>
internal sealed class Section<T>
{
    private readonly Dictionary<string, Node> _nodes = new(StringComparer.Ordinal);
    private readonly List<(T Item, Node Node)> _entries = [];
    private readonly Dictionary<string, T> _items = new(StringComparer.Ordinal);

    /// <summary>Takes the sections of several files together; a name that two files give is a problem.</summary>
    /// <param name="files">Each file's section: its node, and what was read from it.</param>
    /// <param name="shape">The section's shape.</param>
    /// <param name="problems">Where duplicates are reported.</param>
    public Section(IEnumerable<(Node? Node, ValueList<T> Items)> files, NamedShape<T> shape, Problems problems)
    {
        foreach (var (section, items) in files)
        {
            foreach (var entry in (section as MappingNode)?.Entries ?? [])
                if (!_nodes.TryAdd(entry.Name, entry) && _nodes[entry.Name] is var first && first.Place.File != entry.Place.File)
                    shape.ReportDuplicate(entry, first.NamePlace, problems);
            _entries.AddRange(items.Select(item => (item, _nodes[shape.NameOf(item)])));
            foreach (var item in items)
                _items.TryAdd(shape.NameOf(item), item);
        }
    }

    /// <summary>What could be read, with its node, in file order.</summary>
    public IReadOnlyList<(T Item, Node Node)> Entries => _entries;

    /// <summary>Every name, also of what could not be read.</summary>
    public IReadOnlyCollection<string> Names => _nodes.Keys;

    /// <summary>What could be read under a name; nothing when it could not.</summary>
    public T? Find(string name) => _items.GetValueOrDefault(name);

    public bool Contains(string name) => _nodes.ContainsKey(name);
}
