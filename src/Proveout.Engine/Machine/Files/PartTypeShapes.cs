using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How part types stand in a file.</summary>
internal static class PartTypeShapes
{
    private static readonly ListShape<string> Names = new(new NameShape(NameRule.Mark("terminal")));
    private static readonly ListShape<string> PositionNames = new(new NameShape(NameRule.Mark("position")));

    private static readonly WordShape<TerminalRole> Role = new(
        "role",
        (TerminalRole.Line, "line"),
        (TerminalRole.Neutral, "neutral"),
        (TerminalRole.ProtectiveEarth, "protective-earth"),
        (TerminalRole.Positive, "positive"),
        (TerminalRole.ZeroVolt, "zero-volt"),
        (TerminalRole.Output, "output"),
        (TerminalRole.Signal, "signal"),
        (TerminalRole.Data, "data"),
        (TerminalRole.Winding, "winding"),
        (TerminalRole.Passive, "passive"));

    private static readonly RecordShape<Terminal> Terminal = new(
        "terminal",
        [
            Key<Terminal>.Needed("role", "What it carries.", Role, terminal => terminal.Role),
            Key<Terminal>.Optional(
                "voltage",
                "Highest voltage it may see against its companion.",
                new OptionalShape<ElectricPotential>(Shapes.Voltage),
                terminal => terminal.Voltage),
            Key<Terminal>.Optional(
                "current",
                "Highest continuous current.",
                new OptionalShape<ElectricCurrent>(Shapes.Current),
                terminal => terminal.Current),
            Key<Terminal>.Optional(
                "peak",
                "Highest current for some milliseconds, as at switching on.",
                new OptionalShape<ElectricCurrent>(Shapes.Current),
                terminal => terminal.Peak),
            Key<Terminal>.Optional(
                "reachable",
                "False when a probe cannot touch it once the part is fitted.",
                FlagShape.Instance,
                terminal => terminal.Reachable, true),
            Key<Terminal>.Optional("sensor", "What a sensor gives at it, or an input reads at it.", RatingShapes.Sensors, terminal => terminal.Sensors),
        ],
        fields => new(
            fields.Name,
            fields.Get<TerminalRole>("role"),
            fields.Get<ElectricPotential?>("voltage"),
            fields.Get<ElectricCurrent?>("current"),
            fields.Get<bool>("reachable"))
        {
            Peak = fields.Get<ElectricCurrent?>("peak"),
            Sensors = fields.Get<ValueList<SensorKind>>("sensor"),
        });

    private static readonly RecordShape<Connector> Connector = new(
        "connector",
        [
            Key<Connector>.Needed("terminals", "Its terminals, in the order in which they sit.", Names, connector => connector.Terminals),
            Key<Connector>.Needed("family", "Connector family.", TextShape.Instance, connector => connector.Family),
            Key<Connector>.Optional(
                "pluggable",
                "True when it has a plug that pulls off with its conductors.",
                FlagShape.Instance,
                connector => connector.Pluggable),
            Key<Connector>.Optional("clamp", "How its terminals hold a conductor.", RatingShapes.Clamp, connector => connector.Clamp),
            Key<Connector>.Optional("pitch", "Distance between neighbouring terminals.", Shapes.AnyLength, connector => connector.Pitch),
            Key<Connector>.Optional("longest", "Longest lead that its kind of signal bears.", Shapes.AnyLength, connector => connector.Longest),
        ],
        fields => new(fields.Name, fields.Get<ValueList<string>>("terminals"), fields.Text("family"), fields.Get<bool>("pluggable"))
        {
            Clamp = fields.Get<ClampKind?>("clamp"),
            Pitch = fields.Get<Length?>("pitch"),
            Longest = fields.Get<Length?>("longest"),
        });

    private static readonly RecordShape<Control> Control = new(
        "control",
        [
            Key<Control>.Needed("positions", "Its positions, in plain words.", PositionNames, control => control.Positions),
            Key<Control>.Needed(
                "rest",
                "The position for dead tests unless a check says otherwise.",
                new NameShape(NameRule.Mark("position")),
                control => control.Rest),
        ],
        fields => new(fields.Name, fields.Get<ValueList<string>>("positions"), fields.Text("rest")));

    private static readonly NamedShape<JumperPosition> Positions = new(
        NameRule.Mark("position"),
        new PairShape<JumperPosition, string>(CircuitElementShape.NodeName, (name, post) => new(name, post), position => position.Post),
        position => position.Name);

    private static readonly RecordShape<Jumper> Jumper = new(
        "jumper",
        [
            Key<Jumper>.Needed("common", "Node of the common post.", CircuitElementShape.NodeName, jumper => jumper.Common),
            Key<Jumper>.Needed(
                "positions",
                "The node that each position joins to the common post.",
                Positions,
                jumper => jumper.Positions),
        ],
        fields => new(fields.Name, fields.Text("common"), fields.Get<ValueList<JumperPosition>>("positions")));

    private static readonly RecordShape<PartType> Type = new(
        "part type",
        [
            Key<PartType>.Needed("name", "What the trade calls it.", TextShape.Instance, type => type.Name),
            Key<PartType>.Needed(
                "letter",
                "Class letter for designations, IEC 81346-2.",
                new NameShape(NameRule.ClassLetter),
                type => type.ClassLetter),
            Key<PartType>.Optional(
                "note",
                "What a builder should know; where its values come from.",
                TextShape.Instance,
                type => type.Note),
            Key<PartType>.Optional(
                "exposed",
                "True when it is an exposed conductive part: metal that can be touched and could become live.",
                FlagShape.Instance,
                type => type.ExposedConductivePart),
            Key<PartType>.Optional("size", "Width, height and depth, as one stands before it.", new OptionalShape<Outline>(LayoutShapes.Size), type => type.Size),
            Key<PartType>.Optional("free", "Room that must stay free around it.", LayoutShapes.Clearances!, type => type.Clearances),
            Key<PartType>.Optional("edges", "At which edges its terminals sit.", LayoutShapes.Sides, type => type.Sides, TerminalSides.None),
            Key<PartType>.Optional("ratings", "What its data sheet says besides the ratings of its terminals.", RatingShapes.Ratings, type => type.Ratings, PartRatings.None),
            Key<PartType>.Optional("carries-bond", "False when its metal carries no protective bonding on.", FlagShape.Instance, type => type.CarriesBond, true),
            Key<PartType>.Needed(
                "terminals",
                "Terminals in the order in which they sit beside each other.",
                ByName("terminal", Terminal, terminal => terminal.Name),
                type => type.Terminals),
            Key<PartType>.Optional(
                "connectors",
                "Terminals that are made and broken together.",
                ByName("connector", Connector, connector => connector.Name),
                type => type.Connectors),
            Key<PartType>.Optional(
                "controls",
                "What a person operates.",
                ByName("control", Control, control => control.Name),
                type => type.Controls),
            Key<PartType>.Optional(
                "jumpers",
                "Bridges that select.",
                ByName("jumper", Jumper, jumper => jumper.Name),
                type => type.Jumpers),
            Key<PartType>.Optional(
                "circuit",
                "The circuit inside, element by element.",
                ByName("element", CircuitElementShape.Instance, element => element.Name),
                type => type.Circuit),
        ],
        fields => new(
            fields.Name,
            fields.Text("name"),
            fields.Text("letter"),
            fields.Text("note"),
            fields.Get<bool>("exposed"),
            fields.Get<ValueList<Terminal>>("terminals"),
            fields.Get<ValueList<Connector>>("connectors"),
            fields.Get<ValueList<Control>>("controls"),
            fields.Get<ValueList<Jumper>>("jumpers"),
            fields.Get<ValueList<CircuitElement>>("circuit"))
        {
            Size = fields.Get<Outline?>("size"),
            Clearances = fields.Get<Clearances?>("free"),
            Sides = fields.Get<TerminalSides>("edges"),
            Ratings = fields.Get<PartRatings>("ratings"),
            CarriesBond = fields.Get<bool>("carries-bond"),
        });

    public static readonly NamedShape<PartType> Types = new(NameRule.PartType, Type, type => type.Id);

    private static NamedShape<T> ByName<T>(string kind, Shape<T> item, Func<T, string> nameOf) => new(NameRule.Mark(kind), item, nameOf);
}
