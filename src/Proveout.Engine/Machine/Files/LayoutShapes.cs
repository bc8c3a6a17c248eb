using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How surfaces, rails, and the places and outlines of things stand in a file.</summary>
internal static class LayoutShapes
{
    public static readonly QuantityShape<Outline> Size = Lengths<Outline>(
        "size",
        2,
        3,
        mayBeZero: false,
        lengths => new(Of(lengths[0]), Of(lengths[1]), lengths.Length > 2 ? Of(lengths[2]) : null),
        size => size.Depth is { } depth ? [size.Width, size.Height, depth] : [size.Width, size.Height]);

    public static readonly QuantityShape<PlanePoint> Point = Lengths<PlanePoint>(
        "place", 2, 2, mayBeZero: true, lengths => new(Of(lengths[0]), Of(lengths[1])), point => [point.Across, point.Up]);

    public static readonly QuantityShape<Length> Distance = Lengths<Length>("distance", 1, 1, mayBeZero: true, lengths => Of(lengths[0]), length => [length]);

    private static readonly WordShape<QuarterTurn> Turn = new(
        "quarter turn",
        (QuarterTurn.None, "0 deg"),
        (QuarterTurn.One, "90 deg"),
        (QuarterTurn.Two, "180 deg"),
        (QuarterTurn.Three, "270 deg"));

    private static readonly NameShape SurfaceName = new(NameRule.Mark("surface"));

    private static readonly ListShape<string> TerminalNames = new(new NameShape(NameRule.Mark("terminal")));

    private static readonly RecordShape<Surface> SurfaceShape = new(
        "surface",
        [
            Key<Surface>.Needed("size", "Width and height; a third length is the room in front of it.", Size, surface => surface.Size),
            Key<Surface>.Optional("slack", "Spare length of a conductor at each end on it.", new OptionalShape<Length>(Distance), surface => surface.Slack),
            Key<Surface>.Optional("note", "Anything a builder should know.", TextShape.Instance, surface => surface.Note),
        ],
        fields => new(fields.Name, fields.Get<Outline>("size"), fields.Get<Length?>("slack"), fields.Text("note")));

    private static readonly RecordShape<Rail> RailShape = new(
        "rail",
        [
            Key<Rail>.Needed("on", "The surface that it is fixed to.", SurfaceName, rail => rail.On),
            Key<Rail>.Needed("from", "Left or lower end of its centre line.", Point, rail => rail.From),
            Key<Rail>.Needed("to", "Right or upper end of its centre line.", Point, rail => rail.To),
        ],
        fields => new(fields.Name, fields.Text("on"), fields.Get<PlanePoint>("from"), fields.Get<PlanePoint>("to")));

    public static readonly NamedShape<Surface> Surfaces = new(NameRule.Mark("surface"), SurfaceShape, surface => surface.Name);

    public static readonly NamedShape<Rail> Rails = new(NameRule.Mark("rail"), RailShape, rail => rail.Name);

    public static readonly RecordShape<Placement> Placement = new(
        "placement",
        [
            Key<Placement>.Needed("on", "The surface, rail or part that it is mounted on.", SurfaceName, placement => placement.On),
            Key<Placement>.Optional("at", "On a surface or part: its lower left corner.", new OptionalShape<PlanePoint>(Point), placement => placement.At),
            Key<Placement>.Optional("along", "On a rail: its distance from the rail's first end.", new OptionalShape<Length>(Distance), placement => placement.Along),
            Key<Placement>.Optional("turned", "How far it is turned, counter-clockwise.", Turn, placement => placement.Turn, QuarterTurn.None),
        ],
        fields => new(fields.Text("on"), fields.Get<PlanePoint?>("at"), fields.Get<Length?>("along"), fields.Get<QuarterTurn>("turned")));

    public static readonly RecordShape<Clearances> Clearances = new(
        "clearance",
        [
            Free("above", "Over its upper edge.", clearances => clearances.Above),
            Free("below", "Under its lower edge.", clearances => clearances.Below),
            Free("left", "Beside its left edge.", clearances => clearances.Left),
            Free("right", "Beside its right edge.", clearances => clearances.Right),
            Free("front", "Before its front.", clearances => clearances.Front),
        ],
        fields => new(
            fields.Get<Length?>("above"), fields.Get<Length?>("below"), fields.Get<Length?>("left"), fields.Get<Length?>("right"), fields.Get<Length?>("front")));

    public static readonly RecordShape<TerminalSides> Sides = new(
        "place of terminals",
        [
            Edge("above", "Terminals at its upper edge, from left to right.", sides => sides.Above),
            Edge("below", "Terminals at its lower edge, from left to right.", sides => sides.Below),
            Edge("left", "Terminals at its left edge, from top to bottom.", sides => sides.Left),
            Edge("right", "Terminals at its right edge, from top to bottom.", sides => sides.Right),
        ],
        fields => new(EdgeOf(fields, "above"), EdgeOf(fields, "below"), EdgeOf(fields, "left"), EdgeOf(fields, "right")));

    private static Key<Clearances> Free(string name, string meaning, Func<Clearances, Length?> get) =>
        Key<Clearances>.Optional(name, meaning, new OptionalShape<Length>(Shapes.Length), get);

    private static Key<TerminalSides> Edge(string name, string meaning, Func<TerminalSides, ValueList<string>> get) =>
        Key<TerminalSides>.Optional(name, meaning, TerminalNames, get);

    private static ValueList<string> EdgeOf(Fields fields, string name) => fields.Get<ValueList<string>>(name);

    private static QuantityShape<T> Lengths<T>(string name, int least, int most, bool mayBeZero, Func<double[], T> make, Func<T, Length[]> lengthsOf)
        where T : struct =>
        new(
            name,
            [DimensionsText.Example(least)],
            () => DimensionsText.Pattern(least, most),
            (string text, out T value, [NotNullWhen(false)] out QuantityFault? fault) =>
            {
                value = DimensionsText.TryRead(text, least, most, mayBeZero, out var lengths, out fault) ? make(lengths) : default;
                return fault is null;
            },
            value => DimensionsText.Write(Array.ConvertAll(lengthsOf(value), length => length.Millimeters)));

    private static Length Of(double millimetres) => Length.FromMillimeters(millimetres);
}
