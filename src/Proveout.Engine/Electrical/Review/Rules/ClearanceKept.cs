using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Parts keep off each other, and the room that each asks to be kept free for air, tools and fingers is free.</summary>
internal sealed class ClearanceKept : IReviewRule
{
    private const string Source = "clearances from the part types; common practice";

    public string Id => "clearance-kept";

    public string Words => "room around parts for air, tools and fingers";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var placed = context.Layout.Placed.ToArray();
        return OffSurface(placed).Concat(Overlapping(placed)).Concat(NotFree(placed)).Concat(TooDeep(placed));
    }

    private IEnumerable<Finding> OffSurface(PlacedPart[] placed) =>
        from part in placed
        where part.Carrier is null && !RoomOf(part.Surface).Holds(part.Outline)
        select Found(FindingSeverity.Error, [part.Part.Designation, part.Surface.Name], $"{Name(part)} stands out over the edge of {part.Surface.Name}.", "Move it onto the surface.");

    private IEnumerable<Finding> Overlapping(PlacedPart[] placed) =>
        from pair in Pairs(placed)
        where pair.One.Outline.Overlaps(pair.Other.Outline)
        select Found(FindingSeverity.Error, [pair.One.Part.Designation, pair.Other.Part.Designation], $"{Name(pair.One)} and {Name(pair.Other)} take the same room.", "Move one of them.");

    private IEnumerable<Finding> NotFree(PlacedPart[] placed) =>
        from pair in Pairs(placed)
        where !pair.One.Outline.Overlaps(pair.Other.Outline)
        from side in new[] { (Asks: pair.One, Blocks: pair.Other), (Asks: pair.Other, Blocks: pair.One) }
        where side.Asks.Free.Overlaps(side.Blocks.Outline)
        select Found(
            FindingSeverity.Warning,
            [side.Asks.Part.Designation, side.Blocks.Part.Designation],
            $"{Name(side.Blocks)} stands in the room that {Name(side.Asks)} asks to be kept free{Asked(side.Asks)}: its air or its screws are blocked.",
            "Move one of them.");

    private IEnumerable<Finding> TooDeep(PlacedPart[] placed) =>
        from part in placed
        let room = part.Surface.Size.Depth?.Millimeters
        let depth = part.Part.Size?.Depth?.Millimeters + (part.Carrier?.Size?.Depth?.Millimeters ?? 0)
        let front = part.Part.Type.Clearances?.Front?.Millimeters ?? 0
        where room is not null && depth + front > room
        select Found(
            FindingSeverity.Warning,
            [part.Part.Designation, part.Surface.Name],
            $"{Name(part)} needs {ReviewContext.Number(depth!.Value + front)} mm before {part.Surface.Name}, which has {ReviewContext.Number(room.Value)} mm: the door does not close, or its air is blocked.",
            "Take a deeper enclosure, or move the part.");

    // A part and what it carries share their room on purpose.
    private static IEnumerable<(PlacedPart One, PlacedPart Other)> Pairs(PlacedPart[] placed) =>
        from surface in placed.GroupBy(part => part.Surface.Name)
        let parts = surface.ToArray()
        from at in Enumerable.Range(0, parts.Length)
        from other in parts.Skip(at + 1)
        where parts[at].Carrier == other.Carrier && parts[at].Carrier != other.Part && other.Carrier != parts[at].Part
        select (parts[at], other);

    private static Rectangle RoomOf(Surface surface) => new(0, 0, surface.Size.Width.Millimeters, surface.Size.Height.Millimeters);

    private static string Name(PlacedPart part) => $"{part.Part.Designation} ({part.Part.Name})";

    private static string Asked(PlacedPart part) => part.Part.Type.Clearances is { } free
        ? $" ({string.Join(", ", new[] { ("above", free.Above), ("below", free.Below), ("left", free.Left), ("right", free.Right) }.Where(side => side.Item2 is not null).Select(side => $"{ReviewContext.Number(side.Item2!.Value.Millimeters)} mm {side.Item1}"))})"
        : "";

    private Finding Found(FindingSeverity severity, string[] subjects, string sentence, string fix) => new(Id, severity, [.. subjects], sentence, fix, Source);
}
