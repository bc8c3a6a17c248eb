namespace Proveout.Engine.Machine;

/// <summary>Puts the parts of a machine on its surfaces.</summary>
internal sealed class PlacedParts
{
    private readonly Dictionary<string, Surface> _surfaces;
    private readonly Dictionary<string, Rail> _rails;
    private readonly Dictionary<string, PlacedPart?> _placed = new(StringComparer.Ordinal);
    private readonly MachineDesign _design;

    public PlacedParts(MachineDesign design)
    {
        _design = design;
        _surfaces = design.Surfaces.ToDictionary(surface => surface.Name, StringComparer.Ordinal);
        _rails = design.Rails.ToDictionary(rail => rail.Name, StringComparer.Ordinal);
        foreach (var part in design.Parts)
            Place(part);
    }

    /// <summary>A part on its surface; null when it has no placement or outline, or hangs on nothing that is placed.</summary>
    public PlacedPart? Find(string designation) => _placed.GetValueOrDefault(designation);

    private PlacedPart? Place(Part part)
    {
        // A part that is asked for while it is being placed carries itself, and has no place.
        if (_placed.TryAdd(part.Designation, null) && part.Placement is { } placement && part.Size is { } size)
            _placed[part.Designation] = Place(part, placement, Turned(size, placement.Turn));
        return _placed[part.Designation];
    }

    private PlacedPart? Place(Part part, Placement placement, (double WidthMm, double HeightMm) size)
    {
        if (placement.Along is { } along)
            return _rails.TryGetValue(placement.On, out var rail) && _surfaces.TryGetValue(rail.On, out var below)
                ? new(part, below, rail, null, OnRail(rail, along.Millimeters, size), placement.Turn)
                : null;
        if (placement.At is not { } at)
            return null;
        var corner = SpotMm.Of(at);
        if (_surfaces.TryGetValue(placement.On, out var surface))
            return new(part, surface, null, null, At(corner.Across, corner.Up, size), placement.Turn);
        return _design.FindPart(placement.On) is { } found && Place(found) is { } carrier
            ? new(part, carrier.Surface, carrier.Rail, found, At(carrier.Outline.LeftMm + corner.Across, carrier.Outline.BottomMm + corner.Up, size), placement.Turn)
            : null;
    }

    // A part sits astride the centre line of its rail.
    private static Rectangle OnRail(Rail rail, double alongMm, (double WidthMm, double HeightMm) size)
    {
        var start = SpotMm.Of(rail.From);
        return rail.IsLevel
            ? At(start.Across + alongMm, start.Up - (size.HeightMm / 2), size)
            : At(start.Across - (size.WidthMm / 2), start.Up + alongMm, size);
    }

    private static Rectangle At(double leftMm, double bottomMm, (double WidthMm, double HeightMm) size) =>
        new(leftMm, bottomMm, leftMm + size.WidthMm, bottomMm + size.HeightMm);

    private static (double WidthMm, double HeightMm) Turned(Outline size, QuarterTurn turn) => turn is QuarterTurn.One or QuarterTurn.Three
        ? (size.Height.Millimeters, size.Width.Millimeters)
        : (size.Width.Millimeters, size.Height.Millimeters);
}
