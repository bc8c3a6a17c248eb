namespace Proveout.Engine.Machine;

/// <summary>Which parts of a machine are in a bay.</summary>
public static class BayParts
{
    /// <summary>Parts on its surface, parts that are named, fans in its openings; in file order.</summary>
    public static IReadOnlyList<Part> Of(MachineDesign design, Bay bay)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(bay);
        var named = bay.Parts
            .Concat(bay.Contents.Select(content => content.Part))
            .Concat(bay.Openings.Select(opening => opening.Fan?.Part ?? ""))
            .ToHashSet(StringComparer.Ordinal);
        if (bay.Surface.Length > 0)
        {
            var layout = MachineLayout.Of(design);
            named.UnionWith(layout.Placed.Where(placed => placed.Surface.Name == bay.Surface).Select(placed => placed.Part.Designation));
        }

        return [.. design.Parts.Where(part => named.Contains(part.Designation))];
    }
}
