namespace Proveout.Engine.Machine;

/// <summary>Where the files name a thing.</summary>
/// <remarks>What this does not know of is not lost: the reader refuses a file that names what is no longer there.</remarks>
internal static class References
{
    // Keys whose value, or whose list's items, are designations of parts, each with the sections that it has this meaning in.
    private static readonly (string Section, string Key)[] PartKeys =
    [
        ("parts", "on"), ("heated", "heater"), ("bays", "parts"), ("bays", "part"), ("later", "parts"), ("pulleys", "motor"), ("screws", "motor"),
    ];

    private static readonly string[] EndKeys = ["from", "to"];

    private static readonly (string Section, string Key)[] RouteKeys = [("conductors", "route")];

    /// <summary>Every text of a file that names a thing, its own key among them, with what it says afterwards.</summary>
    public static IReadOnlyDictionary<ScalarNode, string> To(EditedThing thing, string newName, MappingNode root)
    {
        var found = new Dictionary<ScalarNode, string>();
        if (root.Find(thing.Section)?.Find(thing.Name)?.Key is { } own)
            found[own] = newName;
        if (thing.Section == EditedThing.Parts)
            foreach (var section in root.Entries)
                AddParts(section, section.Name, thing.Name, newName, found);
        if (thing.Section == EditedThing.Routes)
            foreach (var (section, key) in RouteKeys)
                if (root.Find(section) is { } node)
                    AddUnder(node, key, thing.Name, newName, found);
        return found;
    }

    private static void AddParts(Node section, string name, string part, string newName, Dictionary<ScalarNode, string> found)
    {
        foreach (var (_, key) in PartKeys.Where(pair => pair.Section == name))
            AddUnder(section, key, part, newName, found);
        if (name == EditedThing.Conductors)
            foreach (var end in from conductor in (section as MappingNode)?.Entries ?? [] from key in EndKeys select conductor.Find(key))
                if (end is ScalarNode text && TerminalReference.TryParse(text.Text) is { } reference && reference.Part == part)
                    found[text] = $"{newName}.{reference.Terminal}";
        if (name == MachineDocument.BaysKey)
            foreach (var bay in (section as MappingNode)?.Entries ?? [])
                if (bay.Find("contents")?.Find(part)?.Key is { } key)
                    found[key] = newName;
    }

    private static void AddUnder(Node node, string key, string name, string newName, Dictionary<ScalarNode, string> found)
    {
        foreach (var entry in (node as MappingNode)?.Entries ?? [])
        {
            if (entry.Name == key)
                foreach (var text in entry is ListNode list ? list.Items.OfType<ScalarNode>() : new[] { entry }.OfType<ScalarNode>())
                    if (text.Text == name)
                        found[text] = newName;
            AddUnder(entry, key, name, newName, found);
        }
    }
}
