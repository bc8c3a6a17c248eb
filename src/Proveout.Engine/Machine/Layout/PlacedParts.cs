namespace Proveout.Engine.Machine;

/// <summary>Puts parts on surfaces.</summary>
internal static class PlacedParts
{
    /// <summary>A part on its surface; null when it has no placement, no outline, or what it is placed on does not exist.</summary>
    public static PlacedPart? Place(Part part, Dictionary<string, Surface> surfaces, Dictionary<string, Rail> rails)
    {
        if (part.Placement is not { } placement || part.Size is not { } size)
            return null;
        var (width, height) = placement.Turn is QuarterTurn.One or QuarterTurn.Three
            ? (size.Height.Millimeters, size.Width.Millimeters)
            : (size.Width.Millimeters, size.Height.Millimeters);
        if (rails.TryGetValue(placement.On, out var rail) && placement.Along is { } along && surfaces.TryGetValue(rail.On, out var below))
            return new(part, below, rail, OnRail(rail, along.Millimeters, width, height), placement.Turn);
        if (surfaces.TryGetValue(placement.On, out var surface) && placement.At is { } at && SpotMm.Of(at) is var corner)
            return new(part, surface, null, new(corner.Across, corner.Up, corner.Across + width, corner.Up + height), placement.Turn);
        return null;
    }

    // A part sits astride the centre line of its rail.
    private static Rectangle OnRail(Rail rail, double alongMm, double widthMm, double heightMm)
    {
        var start = SpotMm.Of(rail.From);
        return rail.IsLevel
            ? new(start.Across + alongMm, start.Up - (heightMm / 2), start.Across + alongMm + widthMm, start.Up + (heightMm / 2))
            : new(start.Across - (widthMm / 2), start.Up + alongMm, start.Across + (widthMm / 2), start.Up + alongMm + heightMm);
    }
}
