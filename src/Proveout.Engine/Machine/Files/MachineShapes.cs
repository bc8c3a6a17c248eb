using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How a machine's head, parts, routes and conductors stand in a file.</summary>
internal static class MachineShapes
{
    private static readonly WordShape<SystemEarthing> Earthing = new(
        "type of system earthing",
        (SystemEarthing.TnS, "TN-S"),
        (SystemEarthing.TnCS, "TN-C-S"),
        (SystemEarthing.TT, "TT"),
        (SystemEarthing.IT, "IT"));

    public static readonly WordShape<RouteKind> RouteWord = new(
        "kind of route",
        (RouteKind.Duct, "duct"),
        (RouteKind.Channel, "channel"),
        (RouteKind.Chain, "chain"),
        (RouteKind.Bundle, "bundle"));

    public static readonly WordShape<ConductorColour> Colour = new(
        "colour",
        (ConductorColour.Black, "black"),
        (ConductorColour.Brown, "brown"),
        (ConductorColour.Red, "red"),
        (ConductorColour.Orange, "orange"),
        (ConductorColour.Yellow, "yellow"),
        (ConductorColour.Green, "green"),
        (ConductorColour.Blue, "blue"),
        (ConductorColour.Violet, "violet"),
        (ConductorColour.Grey, "grey"),
        (ConductorColour.White, "white"),
        (ConductorColour.Pink, "pink"),
        (ConductorColour.Turquoise, "turquoise"),
        (ConductorColour.GreenYellow, "green-yellow"));

    private static readonly RecordShape<MainsSupply> Mains = new(
        "mains supply",
        [
            Key<MainsSupply>.Needed("voltage", "Nominal line-to-neutral voltage, rms.", Shapes.Voltage, mains => mains.Voltage),
            Key<MainsSupply>.Needed("frequency", "Nominal frequency.", Shapes.Frequency, mains => mains.Frequency),
            Key<MainsSupply>.Needed("earthing", "Type of system earthing, IEC 60364-1.", Earthing, mains => mains.Earthing),
            Key<MainsSupply>.Optional(
                "residual-current", "Rated residual current of the device that is known to guard the outlet, IEC 61008-1.", Shapes.AnyCurrent, mains => mains.ResidualCurrent),
        ],
        fields => new(
            fields.Get<ElectricPotential>("voltage"),
            fields.Get<Frequency>("frequency"),
            fields.Get<SystemEarthing>("earthing"))
        {
            ResidualCurrent = fields.Get<ElectricCurrent?>("residual-current"),
        });

    public static readonly RecordShape<MachineHead> Head = new(
        "machine",
        [
            Key<MachineHead>.Needed("name", "What people call the machine.", TextShape.Instance, head => head.Name),
            Key<MachineHead>.Optional("summary", "One or two sentences on what it is.", TextShape.Instance, head => head.Summary),
            Key<MachineHead>.Optional(
                "mains",
                "The supply it is made for; leave out when no mains enters the machine.",
                Mains!,
                head => head.Mains),
        ],
        fields => new(fields.Text("name"), fields.Text("summary"), fields.Get<MainsSupply?>("mains")));

    private static readonly NamedShape<JumperSetting> Jumpers = new(
        NameRule.Mark("jumper"),
        new PairShape<JumperSetting, string>(
            new NameShape(NameRule.Mark("position")),
            (name, position) => new(name, position),
            setting => setting.Position),
        setting => setting.Jumper);

    private static readonly NamedShape<ElementValue> Values = new(
        NameRule.Mark("element"),
        new PairShape<ElementValue, ResistanceBand>(Shapes.Band, (name, band) => new(name, band), value => value.Value),
        value => value.Element);

    private static readonly RecordShape<PartEntry> PartShape = new(
        "part",
        [
            Key<PartEntry>.Needed(
                "type",
                "A type of the catalogue, or of the machine's own.",
                new NameShape(NameRule.PartType),
                part => part.Type),
            Key<PartEntry>.Needed("name", "What it is for.", TextShape.Instance, part => part.Name),
            Key<PartEntry>.Optional("place", "Where it sits.", TextShape.Instance, part => part.Place),
            Key<PartEntry>.Optional("mounted", "Where exactly it is mounted.", LayoutShapes.Placement!, part => part.Placement),
            Key<PartEntry>.Optional("size", "Its own outline, where that differs from its type's.", new OptionalShape<Outline>(LayoutShapes.Size), part => part.OwnSize),
            Key<PartEntry>.Optional(
                "reach",
                "How far its terminals are from the end of the routes to it, when it is not on a surface.",
                new OptionalShape<Length>(LayoutShapes.Distance),
                part => part.Reach),
            Key<PartEntry>.Optional(
                "slack",
                "Spare length that each conductor keeps at it.",
                new OptionalShape<Length>(LayoutShapes.Distance),
                part => part.Slack),
            Key<PartEntry>.Optional("jumpers", "Jumpers that are fitted, with their position.", Jumpers, part => part.Jumpers),
            Key<PartEntry>.Optional("values", "Resistances of elements of the type's circuit, given anew.", Values, part => part.Values),
        ],
        fields => new(
            fields.Name,
            fields.Text("type"),
            fields.Text("name"),
            fields.Text("place"),
            fields.Get<ValueList<JumperSetting>>("jumpers"),
            fields.Get<ValueList<ElementValue>>("values"))
        {
            Placement = fields.Get<Placement?>("mounted"),
            OwnSize = fields.Get<Outline?>("size"),
            Reach = fields.Get<Length?>("reach"),
            Slack = fields.Get<Length?>("slack"),
        });

    private static readonly RecordShape<Route> RouteShape = new(
        "route",
        [
            Key<Route>.Needed("kind", "What carries the conductors.", RouteWord, route => route.Kind),
            Key<Route>.Optional("note", "Anything a builder should know.", TextShape.Instance, route => route.Note),
            Key<Route>.Optional("inside", "Clear width and height across the conductors.", new OptionalShape<Outline>(LayoutShapes.Size), route => route.Inside),
            Key<Route>.Optional("on", "The surface that it lies on or starts from.", new NameShape(NameRule.Mark("surface")), route => route.On),
            Key<Route>.Optional(
                "path",
                "Its centre line, corner by corner; a single point is where it leaves the surface.",
                new ListShape<PlanePoint>(LayoutShapes.Point),
                route => route.Path),
            Key<Route>.Optional("length", "Length of a conductor through it.", new OptionalShape<Length>(Shapes.Length), route => route.Length),
            Key<Route>.Optional(
                "bend-radius",
                "Smallest radius that it bends its conductors to.",
                new OptionalShape<Length>(Shapes.Length),
                route => route.BendRadius),
            Key<Route>.Optional("method", "How conductors lie in it, IEC 60204-1 annex D.", MakeShapes.Method, route => route.Method),
            Key<Route>.Optional("partition", "True when a partition keeps mains apart from the rest.", FlagShape.Instance, route => route.Partition),
            Key<Route>.Optional("relief", "Where its conductors are held against pull.", MakeShapes.Relief, route => route.Relief),
            Key<Route>.Optional("ambient", "Temperature of the air in it.", Shapes.AnyTemperature, route => route.Ambient),
        ],
        fields => new(fields.Name, fields.Get<RouteKind>("kind"), fields.Text("note"))
        {
            Inside = fields.Get<Outline?>("inside"),
            On = fields.Text("on"),
            Path = fields.Get<ValueList<PlanePoint>>("path"),
            Length = fields.Get<Length?>("length"),
            BendRadius = fields.Get<Length?>("bend-radius"),
            Method = fields.Get<InstallationMethod?>("method"),
            Partition = fields.Get<bool>("partition"),
            Relief = fields.Get<StrainRelief?>("relief"),
            Ambient = fields.Get<Temperature?>("ambient"),
        });

    private static readonly RecordShape<Conductor> ConductorShape = new(
        "conductor",
        [
            Key<Conductor>.Needed(
                "from",
                "Terminal that its first end lands on.",
                TerminalReferenceShape.Instance,
                conductor => conductor.From),
            Key<Conductor>.Needed(
                "to",
                "Terminal that its second end lands on.",
                TerminalReferenceShape.Instance,
                conductor => conductor.To),
            Key<Conductor>.Needed("section", "Nominal cross-section of the copper.", Shapes.Section, conductor => conductor.CrossSection),
            Key<Conductor>.Needed("colour", "Colour of the insulation, IEC 60757.", Colour, conductor => conductor.Colour),
            Key<Conductor>.Optional(
                "length",
                "Length from end to end; may be left out where both ends have a place and its routes a length.",
                new OptionalShape<Length>(Shapes.Length),
                conductor => conductor.LengthIsComputed ? null : conductor.Length),
            Key<Conductor>.Optional(
                "route",
                "Routes it runs through, in order.",
                new ListShape<string>(new NameShape(NameRule.Mark("route"))),
                conductor => conductor.Route),
            .. MakeShapes.Make,
        ],
        fields => new(
            fields.Name,
            fields.Get<TerminalReference>("from"),
            fields.Get<TerminalReference>("to"),
            fields.Get<Area>("section"),
            fields.Get<ConductorColour>("colour"),
            fields.Get<Length?>("length") ?? Length.Zero,
            fields.Get<ValueList<string>>("route"))
        {
            LengthIsComputed = fields.Get<Length?>("length") is null,
            Make = MakeShapes.MakeOf(fields),
        });

    public static readonly NamedShape<PartEntry> Parts = new(NameRule.Designation, PartShape, part => part.Designation);

    public static readonly NamedShape<Route> Routes = new(NameRule.Mark("route"), RouteShape, route => route.Name);

    public static readonly NamedShape<Conductor> Conductors = new(NameRule.Mark("conductor"), ConductorShape, conductor => conductor.Id);
}
