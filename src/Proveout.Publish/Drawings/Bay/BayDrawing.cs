using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>
/// Every surface of a machine to scale, as one stands before it: rails, routes with name and fill, outlines of parts with their terminals, and each
/// conductor's way in its colour.
/// </summary>
public static class BayDrawing
{
    // Leaves the foot of the area to the scale bar.
    private const double RoomMm = Paper.Bottom - Paper.Top - 6;

    /// <summary>A sheet for each surface, in file order; none when nothing of the machine has a place.</summary>
    public static IReadOnlyList<DrawingSheet> Of(MachineDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        var layout = MachineLayout.Of(design);
        return [.. design.Surfaces.Select((surface, index) => Sheet(layout, surface, index))];
    }

    private static DrawingSheet Sheet(MachineLayout layout, Surface surface, int index)
    {
        var name = FormattableString.Invariant($"bay-{index + 1}");
        var scale = new BayScale(surface, RoomMm);
        var painter = new BayPainter(layout, surface, scale);
        var parts = layout.Placed.Where(placed => placed.Surface.Name == surface.Name).Select(placed => placed.Part.Designation);
        return Paper.Sheet(
            name,
            $"Places on {surface.Name}",
            FormattableString.Invariant($"The surface {surface.Name}, {surface.Size.Width.Millimeters:0} x {surface.Size.Height.Millimeters:0} mm, to scale 1 : {scale.By:0}, with {string.Join(", ", parts)}."),
            (layout.Design.Name, surface.Note),
            FormattableString.Invariant($"Surface {index + 1} of {layout.Design.Surfaces.Count}"),
            [.. painter.Ground($"{name}-hatch"), .. painter.Wires(), .. painter.Parts(), .. painter.Words(), .. painter.ScaleBar()]);
    }
}
