using System.Globalization;
using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>One conductor from end to end: on the surfaces that it lies on, with all else dimmed, and as a strip of terminals and routes with lengths.</summary>
public static class ConductorDrawing
{
    private const double StripTop = 158;
    private const double RoomMm = StripTop - Paper.Top - 8;

    /// <summary>A sheet for each surface that the conductor lies on; one sheet with the strip alone when it lies on none.</summary>
    /// <exception cref="ArgumentException">The machine has no such conductor.</exception>
    public static IReadOnlyList<DrawingSheet> Of(MachineDesign design, string id)
    {
        ArgumentNullException.ThrowIfNull(design);
        var conductor = design.Conductors.FirstOrDefault(each => each.Id == id) ?? throw new ArgumentException($"The machine has no conductor {id}.", nameof(id));
        return Of(MachineLayout.Of(design), conductor);
    }

    /// <summary>The same, of a layout that is made once for many conductors.</summary>
    public static IReadOnlyList<DrawingSheet> Of(MachineLayout layout, Conductor conductor)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(conductor);
        var way = layout.WayOf(conductor.Id);
        var surfaces = layout.Design.Surfaces.Where(surface => way.Legs.Any(leg => leg.Surface == surface.Name)).ToList();
        return surfaces.Count == 0 ? [Sheet(layout, way, 0, 1, [])] : [.. surfaces.Select((surface, index) => OnSurface(layout, way, surface, index, surfaces.Count))];
    }

    private static DrawingSheet OnSurface(MachineLayout layout, ConductorWay way, Surface surface, int index, int count)
    {
        var scale = new BayScale(surface, RoomMm, isStandard: false);
        var painter = new BayPainter(layout, surface, scale);
        var dimmed = Shape.Group(dimmed: false, [.. painter.Ground(FormattableString.Invariant($"wire-{index + 1}-hatch")), .. painter.Parts()]);
        dimmed.SetAttributeValue("opacity", "0.35");
        var lines = new WayLines(layout, surface, scale).Of(way).ToList();
        return Sheet(layout, way, index, count, [dimmed, .. lines.SelectMany(line => WirePaint.Along(line, way.Conductor.Colour, 1)), .. Ends(layout, way, surface, scale)]);
    }

    private static IEnumerable<XElement> Ends(MachineLayout layout, ConductorWay way, Surface surface, BayScale scale)
    {
        var labels = new Labels();
        foreach (var end in new[] { way.Conductor.From, way.Conductor.To })
            if (layout.PlacedOf(end.Part) is { } placed && placed.Surface.Name == surface.Name)
            {
                var (x, y) = scale.At(placed.SpotOf(end.Terminal));
                yield return Shape.Circle(x, y, 1.4, "none", Shape.Ink, 0.5);
                labels.Write(end.ToString(), new TextStyle(3.2, Bold: true), [(x, y - 4), (x, y + 4), (x, y - 8), (x, y + 8)], hasGround: true);
            }

        foreach (var word in labels.Drawn)
            yield return word;
    }

    private static DrawingSheet Sheet(MachineLayout layout, ConductorWay way, int index, int count, IEnumerable<XElement> picture)
    {
        var conductor = way.Conductor;
        var words = string.Create(CultureInfo.InvariantCulture, $"{ColourWords.Of(conductor.Colour)} {WirePaint.Code(conductor.Colour)}, {conductor.CrossSection.SquareMillimeters:0.###} mm²");
        var through = conductor.Route.Count > 0 ? $", through {string.Join(", ", conductor.Route)}" : "";
        return Paper.Sheet(
            FormattableString.Invariant($"conductor-{index + 1}"),
            $"{conductor.Id}, {words}",
            $"{conductor.Id}, {words}, from {conductor.From} to {conductor.To}{through}.",
            (layout.Design.Name, ""),
            FormattableString.Invariant($"One conductor, sheet {index + 1} of {count}"),
            [.. picture, .. new WayStrip(layout, way, count == 1 && layout.Design.Surfaces.Count == 0 ? 80 : StripTop).Draw()]);
    }
}
