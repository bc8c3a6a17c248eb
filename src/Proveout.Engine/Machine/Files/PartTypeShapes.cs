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
            new Key<Terminal, TerminalRole>("role", "What it carries.", Role, terminal => terminal.Role, true, default),
            new Key<Terminal, ElectricPotential?>("voltage", "Highest voltage it may see against its companion.", new OptionalShape<ElectricPotential>(Shapes.Voltage), terminal => terminal.Voltage, false, null),
            new Key<Terminal, ElectricCurrent?>("current", "Highest continuous current.", new OptionalShape<ElectricCurrent>(Shapes.Current), terminal => terminal.Current, false, null),
            new Key<Terminal, bool>("reachable", "False when a probe cannot touch it once the part is fitted.", FlagShape.Instance, terminal => terminal.Reachable, false, true),
        ],
        fields => new(
            fields.Name,
            fields.Get<TerminalRole>("role"),
            fields.Get<ElectricPotential?>("voltage"),
            fields.Get<ElectricCurrent?>("current"),
            fields.Get<bool>("reachable")));

    private static readonly RecordShape<Connector> Connector = new(
        "connector",
        [
            new Key<Connector, ValueList<string>>("terminals", "Its terminals, in the order in which they sit.", Names, connector => connector.Terminals, true, []),
            new Key<Connector, string>("family", "Connector family.", TextShape.Instance, connector => connector.Family, true, ""),
            new Key<Connector, bool>("pluggable", "True when it has a plug that pulls off with its conductors.", FlagShape.Instance, connector => connector.Pluggable, false, false),
        ],
        fields => new(fields.Name, fields.Get<ValueList<string>>("terminals"), fields.Text("family"), fields.Get<bool>("pluggable")));

    private static readonly RecordShape<Control> Control = new(
        "control",
        [
            new Key<Control, ValueList<string>>("positions", "Its positions, in plain words.", PositionNames, control => control.Positions, true, []),
            new Key<Control, string>("rest", "The position for dead tests unless a check says otherwise.", new NameShape(NameRule.Mark("position")), control => control.Rest, true, ""),
        ],
        fields => new(fields.Name, fields.Get<ValueList<string>>("positions"), fields.Text("rest")));

    private static readonly NamedShape<JumperPosition> Positions = new(
        NameRule.Mark("position"),
        new PairShape<JumperPosition, string>(CircuitElementShape.NodeName, (name, post) => new(name, post), position => position.Post),
        position => position.Name);

    private static readonly RecordShape<Jumper> Jumper = new(
        "jumper",
        [
            new Key<Jumper, string>("common", "Node of the common post.", CircuitElementShape.NodeName, jumper => jumper.Common, true, ""),
            new Key<Jumper, ValueList<JumperPosition>>("positions", "The node that each position joins to the common post.", Positions, jumper => jumper.Positions, true, []),
        ],
        fields => new(fields.Name, fields.Text("common"), fields.Get<ValueList<JumperPosition>>("positions")));

    private static readonly RecordShape<PartType> Type = new(
        "part type",
        [
            new Key<PartType, string>("name", "What the trade calls it.", TextShape.Instance, type => type.Name, true, ""),
            new Key<PartType, string>("letter", "Class letter for designations, IEC 81346-2.", new NameShape(NameRule.ClassLetter), type => type.ClassLetter, true, ""),
            new Key<PartType, string>("note", "What a builder should know; where its values come from.", TextShape.Instance, type => type.Note, false, ""),
            new Key<PartType, bool>("exposed", "True when it is an exposed conductive part: metal that can be touched and could become live.", FlagShape.Instance, type => type.ExposedConductivePart, false, false),
            Named("terminals", "Terminals in the order in which they sit beside each other.", "terminal", Terminal, type => type.Terminals, item => item.Name, true),
            Named("connectors", "Terminals that are made and broken together.", "connector", Connector, type => type.Connectors, item => item.Name),
            Named("controls", "What a person operates.", "control", Control, type => type.Controls, item => item.Name),
            Named("jumpers", "Bridges that select.", "jumper", Jumper, type => type.Jumpers, item => item.Name),
            Named("circuit", "The circuit inside, element by element.", "element", CircuitElementShape.Instance, type => type.Circuit, item => item.Name),
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
            fields.Get<ValueList<CircuitElement>>("circuit")));

    public static readonly NamedShape<PartType> Types = new(NameRule.PartType, Type, type => type.Id);

    private static Key<PartType> Named<T>(
        string name, string meaning, string kind, Shape<T> item, Func<PartType, ValueList<T>> get, Func<T, string> nameOf, bool required = false) =>
        new Key<PartType, ValueList<T>>(name, meaning, new NamedShape<T>(NameRule.Mark(kind), item, nameOf), get, required, []);
}
