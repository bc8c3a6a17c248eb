using System.Globalization;
using System.Xml.Linq;
using Proveout.Engine.Machine;

namespace Proveout.Publish.Drawings;

/// <summary>Draws a surface to scale with all that lies on it.</summary>
internal sealed class BayPainter(MachineLayout layout, Surface surface, BayScale scale)
{
    private const double RailWidthMm = 35;
    // Where along a stretch its words may stand, the middle first.
    private static readonly double[] Shares = [0.5, 0.35, 0.65, 0.2, 0.8];
    private static readonly TextStyle Designation = new(3.2, Bold: true);
    private readonly RouteStretches _occupied = new(layout);
    private readonly List<PlacedPart> _parts = [.. layout.Placed.Where(placed => placed.Surface.Name == surface.Name)];

    /// <summary>The surface, its rails and routes.</summary>
    public IEnumerable<XElement> Ground(string hatch)
    {
        yield return Hatch(hatch);
        yield return Box(new(0, 0, surface.Size.Width.Millimeters, surface.Size.Height.Millimeters), "none", 0.4);
        foreach (var rail in layout.Design.Rails.Where(rail => rail.On == surface.Name))
            foreach (var line in Rail(rail))
                yield return line;
        foreach (var room in Routes().SelectMany(layout.RoomOf))
            yield return Box(room, $"url(#{hatch})", 0.2);
    }

    /// <summary>Every conductor in its colour.</summary>
    public IEnumerable<XElement> Wires()
    {
        var lines = new WayLines(layout, surface, scale);
        foreach (var way in layout.Ways)
            foreach (var line in lines.Of(way))
            {
                var group = Shape.Group(dimmed: false, [Shape.Title($"{WirePaint.Mark(way.Conductor)}: {way.Conductor.From} to {way.Conductor.To}"), .. WirePaint.Along(line, way.Conductor.Colour, 0.3, edge: 0.05)]);
                group.SetAttributeValue("data-conductor", way.Conductor.Id);
                yield return group;
            }
    }

    /// <summary>Outlines of parts, and their terminals.</summary>
    public IEnumerable<XElement> Parts()
    {
        foreach (var placed in _parts)
        {
            var outline = Box(placed.Outline, Paper.Ground, 0.35);
            outline.SetAttributeValue("fill-opacity", "0.82");
            yield return outline;
        }

        foreach (var placed in _parts)
            foreach (var (x, y) in placed.Part.Type.Sides.All.Select(name => scale.At(placed.SpotOf(name))))
                yield return Shape.Circle(x, y, 0.5, Paper.Ground, Shape.Ink, 0.2);
    }

    /// <summary>Designations and names of parts, names and fill of routes, names of terminals, as far as there is room: the first are always there.</summary>
    public IEnumerable<XElement> Words()
    {
        var labels = new Labels();
        foreach (var placed in _parts)
            labels.Write(placed.Part.Designation, Designation, Around(placed), hasGround: true);
        foreach (var placed in _parts)
            Name(labels, placed);
        foreach (var rail in layout.Design.Rails.Where(rail => rail.On == surface.Name))
            labels.Write(rail.Name, Paper.Small, new[] { SpotMm.Of(rail.To), SpotMm.Of(rail.From) }.Select(scale.At), hasGround: true);
        foreach (var route in Routes())
            OfRoute(labels, route);
        foreach (var placed in _parts)
            Terminals(labels, placed);
        return labels.Drawn;
    }

    /// <summary>A bar of 100 mm, or as much as stands for it at a small scale.</summary>
    public IEnumerable<XElement> ScaleBar()
    {
        var length = scale.By <= 5 ? 100 : scale.By * 20;
        var y = scale.Bottom + 4;
        for (var part = 0; part < 4; part++)
            yield return Shape.Box(scale.Left + (part * length / 4 / scale.By), y, length / 4 / scale.By, 1.2, 0, part % 2 == 0 ? Shape.Ink : "none", Shape.Ink, 0.2);
        var words = string.Create(CultureInfo.InvariantCulture, $"{length:0} mm, scale 1 : {scale.By:0}; figures in routes: how full, of their inside");
        yield return Shape.Text(words, scale.Left + (length / scale.By) + 3, y + 1.6, Paper.Small, 200);
    }

    private IEnumerable<Route> Routes() => layout.Design.Routes.Where(route => route.LiesOnSurface && route.On == surface.Name);

    private static XElement Hatch(string name)
    {
        var pattern = Shape.Element("pattern", ("id", name), ("width", 2.4), ("height", 2.4), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)"));
        var line = Shape.Line(0, 0, 0, 2.4, Shape.Ink, 0.12);
        line.SetAttributeValue("opacity", "0.55");
        pattern.Add(line);
        return pattern;
    }

    private XElement Box(Rectangle box, string fill, double line) =>
        Shape.Box(scale.X(box.LeftMm), scale.Y(box.TopMm), box.WidthMm / scale.By, box.HeightMm / scale.By, 0.5, fill, Shape.Ink, line);

    private IEnumerable<XElement> Rail(Rail rail)
    {
        var (from, to) = (SpotMm.Of(rail.From), SpotMm.Of(rail.To));
        var half = RailWidthMm / 2;
        var box = rail.IsLevel ? new Rectangle(from.Across, from.Up - half, to.Across, from.Up + half) : new Rectangle(from.Across - half, from.Up, from.Across + half, to.Up);
        var body = Box(box, Shape.Ink, 0.2);
        body.SetAttributeValue("fill-opacity", "0.1");
        yield return body;
        var (start, end) = (scale.At(from), scale.At(to));
        var centre = Shape.Line(start.X, start.Y, end.X, end.Y, Shape.Ink, 0.15);
        centre.SetAttributeValue("stroke-dasharray", "4 1 0.6 1");
        yield return centre;
    }

    private IEnumerable<(double X, double Y)> Around(PlacedPart placed)
    {
        var (x, y) = scale.At(placed.Outline.Middle);
        var (top, bottom) = (scale.Y(placed.Outline.TopMm), scale.Y(placed.Outline.BottomMm));
        return [(x, Math.Min(y, top + 4.2)), (x, y), (x, Math.Max(y, bottom - 4)), (scale.X(placed.Outline.LeftMm) + 6, y), (scale.X(placed.Outline.RightMm) - 6, y), (x, top - 2), (x, bottom + 2)];
    }

    private void Name(Labels labels, PlacedPart placed)
    {
        var room = (placed.Outline.WidthMm / scale.By) - 3;
        var lines = TextBlock.Lines(placed.Part.Name, Paper.Small, room);
        var y = Math.Min(scale.At(placed.Outline.Middle).Y, scale.Y(placed.Outline.TopMm) + 4.2) + 3.6;
        if (lines.Any(line => Paper.Small.Width(line) > room) || y + (lines.Count * 3.1) > scale.Y(placed.Outline.BottomMm))
            return;
        foreach (var line in lines)
        {
            labels.Write(line, Paper.Small, [(scale.At(placed.Outline.Middle).X, y)]);
            y += 3.1;
        }
    }

    private void OfRoute(Labels labels, Route route)
    {
        var corners = route.Path.Select(SpotMm.Of).ToList();
        var legs = corners.Zip(corners.Skip(1)).OrderByDescending(leg => leg.First.DistanceTo(leg.Second)).ToList();
        foreach (var (from, to) in legs.Take(1))
        {
            var isUpright = from.Across == to.Across;
            labels.Write(route.Name, Paper.Small, Shares.Select(share => scale.At(from.Towards(to, share))), isUpright, hasGround: true);
        }

        foreach (var stretch in RouteFill.Of(_occupied, route, 26 * scale.By))
        {
            var text = string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(stretch.Share * 100):0} %");
            labels.Write(text, Paper.Small, Shares.Select(share => scale.At(At(corners, stretch.FromMm + (share * (stretch.ToMm - stretch.FromMm))))), hasGround: true);
        }
    }

    private static SpotMm At(List<SpotMm> corners, double stationMm)
    {
        foreach (var (from, to) in corners.Zip(corners.Skip(1)))
        {
            var length = from.DistanceTo(to);
            if (stationMm <= length)
                return from.Towards(to, stationMm / length);
            stationMm -= length;
        }

        return corners[^1];
    }

    // Names stand inside the outline, beside their terminals, where those are far enough apart to read.
    private void Terminals(Labels labels, PlacedPart placed)
    {
        foreach (var name in placed.Part.Type.Sides.All)
        {
            var (x, y) = scale.At(placed.SpotOf(name));
            var middle = scale.At(placed.Outline.Middle);
            var (left, right) = (scale.X(placed.Outline.LeftMm), scale.X(placed.Outline.RightMm));
            var isAtSide = Math.Abs(x - left) < 0.01 || Math.Abs(x - right) < 0.01;
            var half = (Paper.Small.Width(name) / 2) + 1.4;
            labels.Write(name, Paper.Small, isAtSide ? [(x + (x < middle.X ? half : -half), y)] : [(x, y + (y < middle.Y ? 2.2 : -2.2))]);
        }
    }
}
