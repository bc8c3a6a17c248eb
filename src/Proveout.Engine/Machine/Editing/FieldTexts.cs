namespace Proveout.Engine.Machine;

/// <summary>What the fields of things say, as they are written.</summary>
public static class FieldTexts
{
    private static readonly Dictionary<string, string> None = [];

    /// <summary>Text by path of keys, blanks between; the texts of a list with commas between. Empty when there is no such thing.</summary>
    /// <remarks>Lists of anything but texts are left out: they are changed in the text of the file.</remarks>
    public static IReadOnlyDictionary<string, string> Of(IReadOnlyList<SourceText> files, EditedThing thing) =>
        EditedFiles.Read(files).Value?.Holding(thing, mayBeNew: false)?.Root.Find(thing.Section)?.Find(thing.Name) is { } node ? TextsOf(node) : None;

    /// <summary>The same of every thing of a section, by name, in the order of the files.</summary>
    public static IReadOnlyList<(string Name, IReadOnlyDictionary<string, string> Texts)> OfSection(IReadOnlyList<SourceText> files, string section) =>
    [
        .. from file in EditedFiles.Read(files).Value?.All ?? []
           from entry in (file.Root.Find(section) as MappingNode)?.Entries ?? []
           select (entry.Name, TextsOf(entry)),
    ];

    private static IReadOnlyDictionary<string, string> TextsOf(Node node)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        Add(node, "", texts);
        return texts;
    }

    private static void Add(Node node, string path, Dictionary<string, string> texts)
    {
        switch (node)
        {
            case ScalarNode scalar:
                texts[path] = scalar.IsNothing ? "" : scalar.Text;
                break;
            case ListNode list when list.Items.All(item => item is ScalarNode):
                texts[path] = string.Join(", ", list.Items.Cast<ScalarNode>().Select(item => item.Text));
                break;
            case MappingNode mapping:
                foreach (var entry in mapping.Entries)
                    Add(entry, path.Length == 0 ? entry.Name : $"{path} {entry.Name}", texts);
                break;
        }
    }
}
