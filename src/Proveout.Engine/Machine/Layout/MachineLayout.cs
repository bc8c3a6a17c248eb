namespace Proveout.Engine.Machine;

/// <summary>Where the parts of a machine are, and the way of each conductor: plain geometry of what the machine file says.</summary>
public sealed class MachineLayout
{
    // Walls of plastic duct, channel and chain: common practice, on the safe side for neighbours.
    private const double WallMm = 2;

    private readonly PlacedParts _placed;
    private readonly Dictionary<string, Route> _routes;
    private readonly Dictionary<string, Polyline> _lines = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ConductorWay> _ways = new(StringComparer.Ordinal);

    private MachineLayout(MachineDesign design)
    {
        Design = design;
        _placed = new(design);
        _routes = design.Routes.ToDictionary(route => route.Name, StringComparer.Ordinal);
        foreach (var route in design.Routes.Where(route => route.LiesOnSurface))
            _lines[route.Name] = new(route.Path.Select(SpotMm.Of));
        foreach (var conductor in design.Conductors)
            _ways[conductor.Id] = WayFinder.Of(this, conductor);
    }

    /// <summary>The machine.</summary>
    public MachineDesign Design { get; }

    /// <summary>Every part that has a place on a surface, in file order.</summary>
    public IEnumerable<PlacedPart> Placed => Design.Parts.Select(part => PlacedOf(part.Designation)).OfType<PlacedPart>();

    /// <summary>The way of every conductor, in file order.</summary>
    public IEnumerable<ConductorWay> Ways => Design.Conductors.Select(conductor => _ways[conductor.Id]);

    /// <summary>The layout of a machine whose references are in order.</summary>
    public static MachineLayout Of(MachineDesign design) => new(design);

    /// <summary>The machine with the length of every conductor whose file gives none; those that cannot be computed keep a length of zero.</summary>
    public static MachineDesign WithLengths(MachineDesign design)
    {
        if (!design.Conductors.Any(conductor => conductor.LengthIsComputed))
            return design;
        var layout = Of(design);
        return design with { Conductors = layout.Ways.Select(Cut).ToValueList() };
    }

    /// <summary>A part on its surface; null when it has no place there.</summary>
    public PlacedPart? PlacedOf(string designation) => _placed.Find(designation);

    /// <summary>The way of a conductor.</summary>
    public ConductorWay WayOf(string conductor) => _ways[conductor];

    /// <summary>The room that a route takes on its surface, wall included, leg by leg; none when it lies on no surface or its size is not known.</summary>
    public IEnumerable<Rectangle> RoomOf(Route route)
    {
        if (LineOf(route) is not { } line || route.Inside is not { } inside)
            yield break;
        var half = (inside.Width.Millimeters / 2) + WallMm;
        foreach (var (from, to) in line.Corners.Zip(line.Corners.Skip(1)))
            yield return new Rectangle(
                Math.Min(from.Across, to.Across), Math.Min(from.Up, to.Up), Math.Max(from.Across, to.Across), Math.Max(from.Up, to.Up)).Grown(half);
    }

    internal Route RouteOf(string name) => _routes[name];

    internal Polyline? LineOf(Route route) => _lines.GetValueOrDefault(route.Name);

    internal double? ReachMm(string designation) => Design.FindPart(designation)?.Reach?.Millimeters;

    internal double SlackAtMm(string designation) =>
        (Design.FindPart(designation)?.Slack ?? PlacedOf(designation)?.Surface.Slack)?.Millimeters ?? 0;

    private static Conductor Cut(ConductorWay way) => way.Conductor.LengthIsComputed && way.Missing is null
        ? way.Conductor with { Length = UnitsNet.Length.FromMillimeters(way.CutMm) }
        : way.Conductor;
}
