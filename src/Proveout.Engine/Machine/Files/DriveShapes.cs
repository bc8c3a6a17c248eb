using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>How axes, pulleys, anchors, belts and screws stand in a file.</summary>
internal static class DriveShapes
{
    public const string AxesKey = "axes";
    public const string PulleysKey = "pulleys";
    public const string AnchorsKey = "anchors";
    public const string BeltsKey = "belts";
    public const string ScrewsKey = "screws";

    private const int MostTeeth = 1000;
    private const int MostSteps = 100_000;

    private static readonly ListShape<Riding> At = new(RidingShape.Instance, 2);

    private static readonly NameShape PlaneName = new(NameRule.Mark("plane"));

    private static readonly WordShape<PulleyKind> Kind = new(
        "kind of pulley", (PulleyKind.Toothed, "toothed"), (PulleyKind.Smooth, "smooth"), (PulleyKind.ToothedIdler, "toothed-idler"));

    private static readonly WordShape<BeltTurn> Turn = new("way to bend", (BeltTurn.None, "clamped"), (BeltTurn.Left, "left"), (BeltTurn.Right, "right"));

    private static readonly WordShape<BeltSide> Side = new("side of a belt", (BeltSide.Left, "left"), (BeltSide.Right, "right"));

    private static readonly RecordShape<Turning> Driven = new(
        "drive by a motor",
        [
            Key<Turning>.Needed("motor", "Designation of the motor.", new NameShape(NameRule.Designation), turning => turning.Motor),
            Key<Turning>.Optional("turns", "Turns of the motor for one turn of what it drives.", new NumberShape("ratio", 1000, isWhole: false), turning => turning.MotorTurns, 1),
            Key<Turning>.Optional("reversed", "True when a positive turn of the motor turns it to the right.", FlagShape.Instance, turning => turning.Reversed),
            Key<Turning>.Optional(
                "full-steps", "Full steps in a turn of the motor.", new NumberShape("number of steps", MostSteps, isWhole: true), turning => turning.FullSteps, Turning.UsualFullSteps),
        ],
        fields => new(fields.Text("motor"), fields.Get<double>("turns"), fields.Get<bool>("reversed"), (int)fields.Get<double>("full-steps")));

    private static readonly RecordShape<Axis> AxisShape = new(
        "axis",
        [
            Key<Axis>.Needed("from", "Its lowest coordinate.", FixedLengthShape.Instance, axis => axis.Low),
            Key<Axis>.Needed("to", "Its highest coordinate.", FixedLengthShape.Instance, axis => axis.High),
        ],
        fields => new(fields.Name, fields.Get<Length>("from"), fields.Get<Length>("to")));

    private static readonly RecordShape<Pulley> PulleyShape = new(
        "pulley",
        [
            Key<Pulley>.Needed("kind", "What it is.", Kind, pulley => pulley.Kind),
            Key<Pulley>.Optional("teeth", "Number of its teeth.", new NumberShape("number of teeth", MostTeeth, isWhole: true), pulley => pulley.Teeth, 0),
            Key<Pulley>.Optional("pitch", "Pitch of its teeth.", Shapes.AnyLength, pulley => pulley.Pitch),
            Key<Pulley>.Optional("diameter", "Outer diameter of a smooth idler.", Shapes.AnyLength, pulley => pulley.Diameter),
            Key<Pulley>.Needed("plane", "The flat that it lies in; a name of your own.", PlaneName, pulley => pulley.Plane),
            Key<Pulley>.Needed("at", "Its centre: to the right and upward in the drawing; may ride on axes.", At, pulley => [pulley.Across, pulley.Up]),
            Key<Pulley>.Optional("height", "Height of the middle of its face above the plane's ground.", FixedLengthShape.Instance, pulley => pulley.Height, Length.Zero),
            Key<Pulley>.Optional("flanged", "True when rims keep the belt on it.", FlagShape.Instance, pulley => pulley.Flanged),
            Key<Pulley>.Optional("shaft", "The shaft that it turns with, when others turn with it.", new NameShape(NameRule.Mark("shaft")), pulley => pulley.Shaft),
            Key<Pulley>.Optional("driven", "The motor that turns it.", Driven!, pulley => pulley.Driven),
        ],
        fields => new(
            fields.Name,
            fields.Get<PulleyKind>("kind"),
            (int)fields.Get<double>("teeth"),
            fields.Get<Length?>("pitch"),
            fields.Get<Length?>("diameter"),
            fields.Text("plane"),
            Place(fields, 0),
            Place(fields, 1),
            fields.Get<Length>("height"),
            fields.Get<bool>("flanged"))
        {
            Shaft = fields.Text("shaft"),
            Driven = fields.Get<Turning?>("driven"),
        });

    private static readonly RecordShape<BeltAnchor> AnchorShape = new(
        "anchor",
        [
            Key<BeltAnchor>.Needed("plane", "The flat that it lies in; a name of your own.", PlaneName, anchor => anchor.Plane),
            Key<BeltAnchor>.Needed("at", "Its place: to the right and upward in the drawing; may ride on axes.", At, anchor => [anchor.Across, anchor.Up]),
            Key<BeltAnchor>.Optional("height", "Height of the belt's middle above the plane's ground.", FixedLengthShape.Instance, anchor => anchor.Height, Length.Zero),
        ],
        fields => new(fields.Name, fields.Text("plane"), Place(fields, 0), Place(fields, 1), fields.Get<Length>("height")));

    private static readonly RecordShape<BeltPoint> PointShape = new(
        "point of a belt",
        [
            Key<BeltPoint>.Needed("at", "Name of the pulley or anchor.", new NameShape(NameRule.Mark("pulley or anchor")), point => point.At),
            Key<BeltPoint>.Optional("turn", "Which way it bends there, going along the list.", Turn, point => point.Turn, BeltTurn.None),
            Key<BeltPoint>.Optional("half-turn", "True when the span that leads to it has half a turn of twist.", FlagShape.Instance, point => point.HalfTurn),
        ],
        fields => new(fields.Text("at"), fields.Get<BeltTurn>("turn"), fields.Get<bool>("half-turn")));

    private static readonly RecordShape<Belt> BeltShape = new(
        "belt",
        [
            Key<Belt>.Optional("closed", "True for a loop without ends.", FlagShape.Instance, belt => belt.Closed),
            Key<Belt>.Needed("pitch", "Pitch of its teeth.", Shapes.Length, belt => belt.Pitch),
            Key<Belt>.Needed("width", "Its width.", Shapes.Length, belt => belt.Width),
            Key<Belt>.Needed("teeth", "The side that its teeth are on, going along the list from the first point.", Side, belt => belt.Teeth),
            Key<Belt>.Optional("to-tips", "From the pitch line to the tips of its teeth.", Shapes.AnyLength, belt => belt.ToTips),
            Key<Belt>.Optional("to-back", "From the pitch line to its back.", Shapes.AnyLength, belt => belt.ToBack),
            Key<Belt>.Optional("tail", "Length to leave at each end until tension is set.", Shapes.AnyLength, belt => belt.Tail),
            Key<Belt>.Optional("tension", "The pull that it is set to.", Shapes.AnyForce, belt => belt.Tension),
            Key<Belt>.Needed("path", "Its points in order.", new ListShape<BeltPoint>(PointShape), belt => belt.Path),
        ],
        fields => new(
            fields.Name,
            fields.Get<bool>("closed"),
            fields.Get<Length>("pitch"),
            fields.Get<Length>("width"),
            fields.Get<BeltSide>("teeth"),
            fields.Get<ValueList<BeltPoint>>("path"))
        {
            ToTips = fields.Get<Length?>("to-tips"),
            ToBack = fields.Get<Length?>("to-back"),
            Tail = fields.Get<Length?>("tail"),
            Tension = fields.Get<Force?>("tension"),
        });

    private static readonly RecordShape<Screw> ScrewShape = new(
        "screw",
        [
            Key<Screw>.Needed("moves", "The axis that it moves.", new NameShape(NameRule.Mark("axis")), screw => screw.Moves),
            Key<Screw>.Needed("lead", "Travel for one turn.", Shapes.Length, screw => screw.Lead),
            Key<Screw>.Needed("driven", "The motor that turns it.", Driven!, screw => screw.Driven),
        ],
        fields => new(fields.Name, fields.Text("moves"), fields.Get<Length>("lead"), fields.Get<Turning?>("driven") ?? new("", 1, false, Turning.UsualFullSteps)));

    public static readonly NamedShape<Axis> Axes = new(NameRule.Mark("axis"), AxisShape, axis => axis.Name);

    public static readonly NamedShape<Pulley> Pulleys = new(NameRule.Mark("pulley"), PulleyShape, pulley => pulley.Name);

    public static readonly NamedShape<BeltAnchor> Anchors = new(NameRule.Mark("anchor"), AnchorShape, anchor => anchor.Name);

    public static readonly NamedShape<Belt> Belts = new(NameRule.Mark("belt"), BeltShape, belt => belt.Name);

    public static readonly NamedShape<Screw> Screws = new(NameRule.Mark("screw"), ScrewShape, screw => screw.Name);

    public static readonly Key<MachineDocument>[] Sections =
    [
        Key<MachineDocument>.Optional(AxesKey, "Axes by name, in millimetres.", Axes, file => file.Motion.Axes),
        Key<MachineDocument>.Optional(PulleysKey, "Pulleys and idlers by name.", Pulleys, file => file.Motion.Pulleys),
        Key<MachineDocument>.Optional(AnchorsKey, "Places that belts are clamped at, by name.", Anchors, file => file.Motion.Anchors),
        Key<MachineDocument>.Optional(BeltsKey, "Belts by name, each with its path.", Belts, file => file.Motion.Belts),
        Key<MachineDocument>.Optional(ScrewsKey, "Screws that move axes, by name.", Screws, file => file.Motion.Screws),
    ];

    public static MotionDesign MotionOf(Fields fields) => new(
        fields.Get<ValueList<Axis>>(AxesKey),
        fields.Get<ValueList<Pulley>>(PulleysKey),
        fields.Get<ValueList<BeltAnchor>>(AnchorsKey),
        fields.Get<ValueList<Belt>>(BeltsKey),
        fields.Get<ValueList<Screw>>(ScrewsKey));

    // A place that could not be read is reported already, and its list is empty.
    private static Riding Place(Fields fields, int which) =>
        fields.Get<ValueList<Riding>>("at") is { Count: 2 } at ? at[which] : RidingShape.Instance.Fallback;
}
