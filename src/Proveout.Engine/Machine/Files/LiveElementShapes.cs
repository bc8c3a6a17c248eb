using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>The keys of elements, and of parts of elements, that count only while the machine is live.</summary>
internal static class LiveElementShapes
{
    private const string FedBy = "fed-by";
    private const string CommandKey = "command";

    private static readonly NameShape Command = new(NameRule.Mark(CommandKey));
    private static readonly ListShape<string> Contacts = new(new NameShape(NameRule.Mark("contact")));
    private static readonly OptionalShape<ElectricPotential> AnyVoltage = new(Shapes.Voltage);

    private static readonly WordShape<FuseCurve> CurveWord = new(
        "curve",
        (FuseCurve.Quick, "quick"),
        (FuseCurve.TimeLag, "time-lag"),
        (FuseCurve.Blade, "blade"),
        (FuseCurve.BreakerB, "breaker-b"),
        (FuseCurve.BreakerC, "breaker-c"),
        (FuseCurve.Thermal, "thermal"));

    public static readonly Key<CircuitElement> Curve = Key<CircuitElement>.Optional(
        "curve", "How fast it interrupts.", new OptionalShape<FuseCurve>(CurveWord), element => ((Fuse)element).Curve);

    public static readonly Key<CircuitElement>[] Feed =
    [
        Key<CircuitElement>.Optional(
            FedBy, "Both nodes of its input.", CircuitElementShape.Ends, element => ((Source)element).Feed is { } feed ? [feed.A, feed.B] : []),
        Key<CircuitElement>.Optional("from", "Input voltage from which it lives.", AnyVoltage, element => ((Source)element).Feed?.From),
        Key<CircuitElement>.Optional(
            "shuts-off", "True when it shuts off above its limit.", FlagShape.Instance, element => ((Source)element).ShutsOff),
    ];

    public static readonly Key<CircuitElement>[] Switch =
    [
        CircuitElementShape.Band(element => ((SwitchedPath)element).Value),
        Key<CircuitElement>.Optional(CommandKey, "The command that closes it.", Command, element => ((SwitchedPath)element).Command),
        Key<CircuitElement>.Optional(
            "driven-by", "Both nodes of the port that closes it.", CircuitElementShape.Ends, element => ((SwitchedPath)element).Port),
        Key<CircuitElement>.Optional("at-least", "Voltage at that port from which it is closed.", AnyVoltage, element => ((SwitchedPath)element).AtLeast),
    ];

    public static readonly Key<CircuitElement>[] Drive =
    [
        Key<CircuitElement>.Needed("control", "The control that it moves.", new NameShape(NameRule.Mark("control")), element => ((Drive)element).Control),
        Key<CircuitElement>.Needed("to", "The position that it moves it to.", new NameShape(NameRule.Mark("position")), element => ((Drive)element).Position),
        Key<CircuitElement>.Needed("pulls-in", "Voltage from which it surely moves.", Shapes.Voltage, element => ((Drive)element).PullsIn),
        Key<CircuitElement>.Needed("drops-out", "Voltage below which it surely lets go.", Shapes.Voltage, element => ((Drive)element).DropsOut),
    ];

    public static readonly Key<CircuitElement>[] Consumer =
    [
        Key<CircuitElement>.Needed("voltage", "Voltage that it is made for.", Shapes.Voltage, element => ((Consumer)element).Voltage),
        Key<CircuitElement>.Needed("current", "Current that it takes at that voltage.", Shapes.Current, element => ((Consumer)element).Current),
        Key<CircuitElement>.Optional("works-from", "Voltage below which it does not work.", AnyVoltage, element => ((Consumer)element).WorksFrom),
    ];

    public static readonly Key<CircuitElement>[] HeldCurrent =
    [
        Key<CircuitElement>.Needed(FedBy, "Both nodes of the port that feeds it.", CircuitElementShape.Ends, element => ((HeldCurrent)element).Feed),
        Key<CircuitElement>.Needed("current", "Current that it holds.", Shapes.Current, element => ((HeldCurrent)element).Current),
        Key<CircuitElement>.Needed(CommandKey, "The command that turns it on.", Command, element => ((HeldCurrent)element).Command),
    ];

    public static readonly Key<CircuitElement>[] Filter =
    [
        Key<CircuitElement>.Needed(
            CircuitElementShape.Value, "Nominal capacitance.", Shapes.Capacitance, element => ((FilterCapacitor)element).Value),
    ];

    public static readonly Key<CircuitElement>[] ResidualTrip =
    [
        Key<CircuitElement>.Needed("opens", "The contacts that it watches and opens.", Contacts, element => ((ResidualTrip)element).Opens),
        Key<CircuitElement>.Needed("current", "Rated residual current.", Shapes.Current, element => ((ResidualTrip)element).Current),
    ];

    public static SourceFeed? FeedOf(Fields fields) =>
        fields.Get<ValueList<string>>(FedBy) is { Count: 2 } ends ? new(ends[0], ends[1], fields.Get<ElectricPotential?>("from") ?? default) : null;

    public static CircuitElement NewSwitch(Fields fields) => new SwitchedPath(
        fields.Name,
        CircuitElementShape.End(fields, 0),
        CircuitElementShape.End(fields, 1),
        fields.Get<ResistanceBand>(CircuitElementShape.Value),
        fields.Text(CommandKey),
        fields.Get<ValueList<string>>("driven-by"),
        fields.Get<ElectricPotential?>("at-least"));

    public static CircuitElement NewDrive(Fields fields) => new Drive(
        fields.Name,
        CircuitElementShape.End(fields, 0),
        CircuitElementShape.End(fields, 1),
        fields.Text("control"),
        fields.Text("to"),
        fields.Get<ElectricPotential>("pulls-in"),
        fields.Get<ElectricPotential>("drops-out"));

    public static CircuitElement NewConsumer(Fields fields) => new Consumer(
        fields.Name,
        CircuitElementShape.End(fields, 0),
        CircuitElementShape.End(fields, 1),
        fields.Get<ElectricPotential>("voltage"),
        fields.Get<ElectricCurrent>("current"),
        fields.Get<ElectricPotential?>("works-from"));

    public static CircuitElement NewHeldCurrent(Fields fields) => new HeldCurrent(
        fields.Name,
        CircuitElementShape.End(fields, 0),
        CircuitElementShape.End(fields, 1),
        fields.Get<ValueList<string>>(FedBy),
        fields.Get<ElectricCurrent>("current"),
        fields.Text(CommandKey));

    public static CircuitElement NewFilter(Fields fields) => new FilterCapacitor(
        fields.Name, CircuitElementShape.End(fields, 0), CircuitElementShape.End(fields, 1), fields.Get<ElectricCapacitance>(CircuitElementShape.Value));

    public static CircuitElement NewResidualTrip(Fields fields) => new ResidualTrip(
        fields.Name,
        CircuitElementShape.End(fields, 0),
        CircuitElementShape.End(fields, 1),
        fields.Get<ValueList<string>>("opens"),
        fields.Get<ElectricCurrent>("current"));
}
