namespace Proveout.Engine.Machine;

/// <summary>One machine file.</summary>
/// <param name="Machine">What the machine is; null when another file of the folder says it.</param>
/// <param name="Types">Part types of the machine's own.</param>
/// <param name="Parts">Its parts.</param>
/// <param name="Surfaces">Its surfaces.</param>
/// <param name="Rails">Its mounting rails.</param>
/// <param name="Routes">Its routes.</param>
/// <param name="Conductors">Its conductors.</param>
/// <param name="Heated">What it heats.</param>
/// <param name="Review">What it says to the review of its design.</param>
/// <param name="Mistakes">Kinds of mistake that it switches off or weighs anew.</param>
internal sealed record MachineDocument(
    MachineHead? Machine,
    ValueList<PartType> Types,
    ValueList<PartEntry> Parts,
    ValueList<Surface> Surfaces,
    ValueList<Rail> Rails,
    ValueList<Route> Routes,
    ValueList<Conductor> Conductors,
    ValueList<HeatedBody> Heated,
    ReviewSettings Review,
    ValueList<MistakeSetting> Mistakes)
{
    /// <summary>Its axes, pulleys, anchors, belts and screws.</summary>
    public MotionDesign Motion { get; init; } = MotionDesign.None;

    /// <summary>What is left for later.</summary>
    public ValueList<LaterFitting> Later { get; init; } = [];

    /// <summary>Its bays.</summary>
    public ValueList<Bay> Bays { get; init; } = [];

    public const string MachineKey = "machine";
    public const string TypesKey = "types";
    public const string PartsKey = "parts";
    public const string SurfacesKey = "surfaces";
    public const string RailsKey = "rails";
    public const string RoutesKey = "routes";
    public const string ConductorsKey = "conductors";
    public const string HeatedKey = "heated";
    public const string LaterKey = "later";
    public const string BaysKey = "bays";
    public const string ReviewKey = "review";
    public const string MistakesKey = "mistakes";

    public static readonly FormatName Format = new("proveout-machine", 1, "machine file");

    public static readonly RecordShape<MachineDocument> Shape = new(
        "machine file",
        [
            Format.Key<MachineDocument>(),
            Key<MachineDocument>.Optional(MachineKey, "What the machine is.", MachineShapes.Head!, file => file.Machine),
            Key<MachineDocument>.Optional(
                TypesKey,
                "Part types of your own; one goes before a type of the catalogue with the same name.",
                PartTypeShapes.Types,
                file => file.Types),
            Key<MachineDocument>.Optional(
                PartsKey,
                "Parts by reference designation, IEC 81346-2.",
                MachineShapes.Parts,
                file => file.Parts),
            Key<MachineDocument>.Optional(SurfacesKey, "Flat places that parts are mounted on, by name.", LayoutShapes.Surfaces, file => file.Surfaces),
            Key<MachineDocument>.Optional(RailsKey, "Mounting rails (IEC 60715), by name.", LayoutShapes.Rails, file => file.Rails),
            Key<MachineDocument>.Optional(RoutesKey, "Ways that conductors run, by name.", MachineShapes.Routes, file => file.Routes),
            Key<MachineDocument>.Optional(ConductorsKey, "Conductors by identifier.", MachineShapes.Conductors, file => file.Conductors),
            .. DriveShapes.Sections,
            Key<MachineDocument>.Optional(HeatedKey, "What the machine heats, by name.", HeatShapes.Bodies, file => file.Heated),
            Key<MachineDocument>.Optional(LaterKey, "What is fitted later, by name, in order: the machine runs without it first.", LaterShapes.Fittings, file => file.Later),
            Key<MachineDocument>.Optional(BaysKey, "Closed rooms of the machine that hold parts which get warm, by name.", BayShapes.Bays, file => file.Bays),
            Key<MachineDocument>.Optional(
                ReviewKey, "Figures, choices and rules that are off for the review of the design.", ReviewShapes.Settings, file => file.Review, ReviewSettings.Default),
            Key<MachineDocument>.Optional(
                MistakesKey,
                "Kinds of mistake to leave out (off), or the probability of each mistake of a kind.",
                MistakeShapes.Settings,
                file => file.Mistakes,
                []),
        ],
        fields => new(
            fields.Get<MachineHead?>(MachineKey),
            fields.Get<ValueList<PartType>>(TypesKey),
            fields.Get<ValueList<PartEntry>>(PartsKey),
            fields.Get<ValueList<Surface>>(SurfacesKey),
            fields.Get<ValueList<Rail>>(RailsKey),
            fields.Get<ValueList<Route>>(RoutesKey),
            fields.Get<ValueList<Conductor>>(ConductorsKey),
            fields.Get<ValueList<HeatedBody>>(HeatedKey),
            fields.Get<ReviewSettings>(ReviewKey),
            fields.Get<ValueList<MistakeSetting>>(MistakesKey))
        {
            Motion = DriveShapes.MotionOf(fields),
            Later = fields.Get<ValueList<LaterFitting>>(LaterKey),
            Bays = fields.Get<ValueList<Bay>>(BaysKey),
        });
}
