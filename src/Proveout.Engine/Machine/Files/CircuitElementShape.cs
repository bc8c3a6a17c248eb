using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>The elements of a circuit; the key <c>kind</c> says which further keys there are.</summary>
internal sealed class CircuitElementShape : Shape<CircuitElement>
{
    private const string KindKey = "kind";
    internal const string Value = "value";

    /// <summary>A node: a terminal of the part, or an inner node of any other name.</summary>
    public static readonly NameShape NodeName = new(NameRule.Mark("node"));

    internal static readonly ListShape<string> Ends = new(NodeName, 2);

    private static readonly Dictionary<string, (Type Type, RecordShape<CircuitElement> Shape)> Kinds = new(StringComparer.Ordinal)
    {
        ["resistor"] = (typeof(Resistor), Kind(
            "resistor",
            fields => new Resistor(fields.Name, End(fields, 0), End(fields, 1), fields.Get<ResistanceBand>(Value)),
            Band(element => ((Resistor)element).Value))),
        ["fuse"] = (typeof(Fuse), Kind(
            "fuse",
            fields => new Fuse(
                fields.Name,
                End(fields, 0),
                End(fields, 1),
                fields.Get<ResistanceBand>(Value),
                fields.Get<ElectricCurrent?>("rating"))
            {
                Curve = fields.Get<FuseCurve?>("curve"),
            },
            Band(element => ((Fuse)element).Value),
            Current("rating", "Rated current.", element => ((Fuse)element).Rating),
            LiveElementShapes.Curve)),
        ["contact"] = (typeof(Contact), Kind(
            "contact",
            fields => new Contact(
                fields.Name,
                End(fields, 0),
                End(fields, 1),
                fields.Text("control"),
                fields.Get<ValueList<string>>("closed-at"),
                fields.Get<ResistanceBand>(Value)),
            Key<CircuitElement>.Needed(
                "control",
                "The control that moves it.",
                new NameShape(NameRule.Mark("control")),
                element => ((Contact)element).Control),
            Key<CircuitElement>.Needed(
                "closed-at",
                "Positions of the control in which it conducts.",
                new ListShape<string>(new NameShape(NameRule.Mark("position"))),
                element => ((Contact)element).ClosedAt),
            Band(element => ((Contact)element).Value))),
        ["diode"] = (typeof(Diode), Kind(
            "diode",
            fields => NewDiode(fields, fields.Get<VoltageSpan>("forward")),
            Key<CircuitElement>.Needed(
                "forward",
                "Lowest and highest forward voltage at meter current.",
                Shapes.ForwardVoltage,
                element => SpanOf((Diode)element)))),
        ["capacitor"] = (typeof(Capacitor), Kind(
            "capacitor",
            fields => new Capacitor(fields.Name, End(fields, 0), End(fields, 1), fields.Get<ElectricCapacitance>(Value)),
            Key<CircuitElement>.Needed(Value, "Nominal capacitance.", Shapes.Capacitance, element => ((Capacitor)element).Value))),
        ["source"] = (typeof(Source), Kind(
            "source",
            fields => new Source(
                fields.Name,
                End(fields, 0),
                End(fields, 1),
                fields.Get<ElectricPotential>("voltage"),
                fields.Get<ElectricCurrent?>("limit"))
            {
                Feed = LiveElementShapes.FeedOf(fields),
                ShutsOff = fields.Get<bool>("shuts-off"),
            },
            [
                Key<CircuitElement>.Needed(
                    "voltage",
                    "Voltage when energised; the first node is the positive pole, or line.",
                    Shapes.Voltage,
                    element => ((Source)element).Voltage),
                Current("limit", "Highest current it delivers.", element => ((Source)element).Limit),
                .. LiveElementShapes.Feed,
            ])),
        ["unpredictable"] = (typeof(Unpredictable), Kind(
            "unpredictable",
            fields => new Unpredictable(fields.Name, End(fields, 0), End(fields, 1), fields.Get<ResistanceBand>(Value)),
            Band(element => ((Unpredictable)element).Value))),
        ["insulation"] = (typeof(Insulation), Kind(
            "insulation",
            fields => new Insulation(fields.Name, End(fields, 0), End(fields, 1), fields.Get<ElectricResistance>("at-least")),
            Key<CircuitElement>.Needed(
                "at-least",
                "Lowest insulation resistance of a sound part.",
                Shapes.Resistance,
                element => ((Insulation)element).AtLeast))),
        ["switch"] = (typeof(SwitchedPath), Kind("switch", LiveElementShapes.NewSwitch, LiveElementShapes.Switch)),
        ["drive"] = (typeof(Drive), Kind("drive", LiveElementShapes.NewDrive, LiveElementShapes.Drive)),
        ["consumer"] = (typeof(Consumer), Kind("consumer", LiveElementShapes.NewConsumer, LiveElementShapes.Consumer)),
        ["held-current"] = (typeof(HeldCurrent), Kind("held-current", LiveElementShapes.NewHeldCurrent, LiveElementShapes.HeldCurrent)),
        ["filter"] = (typeof(FilterCapacitor), Kind("filter", LiveElementShapes.NewFilter, LiveElementShapes.Filter)),
        ["residual-trip"] = (typeof(ResidualTrip), Kind("residual-trip", LiveElementShapes.NewResidualTrip, LiveElementShapes.ResidualTrip)),
    };

    private static readonly WordShape<string> KindWord = new("kind of element", [.. Kinds.Keys.Select(kind => (kind, kind))]);

    public static readonly CircuitElementShape Instance = new();

    public override bool TryRead(Node node, Problems problems, [MaybeNullWhen(false)] out CircuitElement value)
    {
        value = null;
        if (node.Find(KindKey) is { } kind)
            return KindWord.TryRead(kind, problems, out var word) && Kinds[word].Shape.TryRead(node, problems, out value);
        if (node is MappingNode)
            problems.Add(
                "missing-key",
                node.NamePlace,
                $"The element {Quote.Of(node.Name)} has no {Quote.Of(KindKey)}.",
                Spelling.Hint("", Kinds.Keys));
        else
            problems.Add(
                "wrong-type",
                node.NamePlace,
                $"The element {Quote.Of(node.Name)} should have keys and values, but it is {node.Kind}.",
                "Give its `kind`, its nodes as `between`, and its value.");
        return false;
    }

    public override Node Write(CircuitElement value) => Kinds.Values.First(kind => kind.Type == value.GetType()).Shape.Write(value);

    public override JsonObject Describe(SchemaDefinitions definitions) => definitions.Refer("element", () => new()
    {
        ["oneOf"] = new JsonArray([.. Kinds.Values.Select(kind => kind.Shape.Describe(definitions))]),
    });

    private static RecordShape<CircuitElement> Kind(string word, Func<Fields, CircuitElement> make, params Key<CircuitElement>[] further) =>
        new(
            word,
            [
                Key<CircuitElement>.Needed(KindKey, "What it is.", new WordShape<string>("kind of element", (word, word)), _ => word),
                Key<CircuitElement>.Needed(
                    "between",
                    "Its two nodes: terminals of the part, or inner nodes.",
                    Ends,
                    element => [element.A, element.B]),
                .. further,
            ],
            make);

    internal static Key<CircuitElement> Band(Func<CircuitElement, ResistanceBand> get) =>
        Key<CircuitElement>.Needed(Value, "Its resistance.", Shapes.Band, get);

    private static Key<CircuitElement> Current(string name, string meaning, Func<CircuitElement, ElectricCurrent?> get) =>
        Key<CircuitElement>.Optional(name, meaning, new OptionalShape<ElectricCurrent>(Shapes.Current), get);

    internal static string End(Fields fields, int index) => fields.Get<ValueList<string>>("between") is { Count: 2 } ends ? ends[index] : "";

    private static Diode NewDiode(Fields fields, VoltageSpan forward) =>
        new(
            fields.Name,
            End(fields, 0),
            End(fields, 1),
            ElectricPotential.FromVolts(forward.LowVolts),
            ElectricPotential.FromVolts(forward.HighVolts));

    private static VoltageSpan SpanOf(Diode diode) => new(diode.ForwardLow.Volts, diode.ForwardHigh.Volts);
}
