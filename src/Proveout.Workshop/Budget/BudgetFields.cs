namespace Proveout.Workshop;

/// <summary>The figures that the error budget asks for; what is left empty counts as nothing and is named.</summary>
public static class BudgetFields
{
    /// <summary>Travel of x.</summary>
    public static FigureField TravelX { get; } = new("travel-x", "Travel of x, along the beam", "mm", 10, 5000, "From end to end of what the nozzle reaches.");

    /// <summary>Travel of y.</summary>
    public static FigureField TravelY { get; } = new("travel-y", "Travel of y, along the rails", "mm", 10, 5000, "The same for y.");

    /// <summary>Squareness.</summary>
    public static FigureField Square { get; } = new("square", "Beam out of square to the rails, over 200 mm, by", "mm", 0, 10, "The frame page tells it: its figure and uncertainty together.");

    /// <summary>Straightness of the beam from above.</summary>
    public static FigureField BeamSideways { get; } = new("beam-sideways", "Beam's guide straight within, seen from above", "mm", 0, 10, "Straightness by dial along the beam.");

    /// <summary>Straightness of the beam from the front.</summary>
    public static FigureField BeamUpright { get; } = new("beam-upright", "Beam's guide straight within, seen from the front", "mm", 0, 10, "The same upright; a beam sags too.");

    /// <summary>Straightness of a rail from above.</summary>
    public static FigureField RailSideways { get; } = new("rail-sideways", "Rails straight within, seen from above", "mm", 0, 10, "The worse of the two rails.");

    /// <summary>Straightness of a rail from the side.</summary>
    public static FigureField RailUpright { get; } = new("rail-upright", "Rails straight within, seen from the side", "mm", 0, 10, "The worse of the two rails.");

    /// <summary>Parallelism.</summary>
    public static FigureField RailsRise { get; } = new("rails-rise", "One rail rises against the other by", "mm", 0, 10, "Over the travel of y, by a dial on one carriage that rides on the other rail.");

    /// <summary>Backlash of x.</summary>
    public static FigureField BacklashX { get; } = new("backlash-x", "Backlash of x", "mm", 0, 5, "What a dial at the carriage shows when the direction turns round; 0.05 mm is usual (common practice).");

    /// <summary>Backlash of y.</summary>
    public static FigureField BacklashY { get; } = new("backlash-y", "Backlash of y", "mm", 0, 5, "The same for y.");

    /// <summary>Stiffness of a belt.</summary>
    public static FigureField BeltStiffness { get; } = new("belt-stiffness", "Belt: force for each unit of strain", "N", 100, 1_000_000, "Leave it empty when the dial that read the backlash saw the belt's give too.");

    /// <summary>Loop.</summary>
    public static FigureField LoopSpare { get; } = new("loop-spare", "Belt: loop beyond twice the travel", "mm", 20, 5000, "Length of the loop from clamp to clamp, less twice the travel.", "200");

    /// <summary>Shortest run.</summary>
    public static FigureField ShortestRun { get; } = new("shortest-run", "Belt: shortest run from carriage to motor", "mm", 1, 2000, "With the carriage at the motor's end.", "50");

    /// <summary>Friction.</summary>
    public static FigureField Friction { get; } = new("friction", "Friction of a carriage", "N", 0, 500, "Pull it with a spring balance; 2 to 5 N is usual (common practice).");

    /// <summary>Plate.</summary>
    public static FigureField Plate { get; } = new("plate", "Plate after levelling: highest less lowest point", "mm", 0, 10, "The level page tells it; with a height map, what is left between its points.");

    /// <summary>Probe.</summary>
    public static FigureField Probe { get; } = new("probe", "Probed heights may be off by", "mm", 0, 5, "Twice the standard deviation of repeated readings.");

    /// <summary>Drift.</summary>
    public static FigureField Drift { get; } = new("drift", "Height drifts after probing by", "mm", 0, 5, "Mean change of the hot map, or 0.1 mm without a soak.");

    /// <summary>Coefficient.</summary>
    public static FigureField Expansion { get; } = new("expansion", "Growth of the frame for each metre and kelvin", "µm", 0, 100, "23 for aluminium, 12 for steel (from memory).");

    /// <summary>Warming.</summary>
    public static FigureField Warming { get; } = new("warming", "The frame warms by", "K", 0, 200, "After steps for a millimetre were set.");

    /// <summary>What is wanted.</summary>
    public static FigureField Limit { get; } = new("limit", "The nozzle may be off by", "mm", 0.001, 10, "In each direction; leave it empty to see figures only.");

    /// <summary>All of them, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } =
    [
        TravelX, TravelY, Square, BeamSideways, BeamUpright, RailSideways, RailUpright, RailsRise, BacklashX, BacklashY, BeltStiffness, LoopSpare, ShortestRun, Friction,
        Plate, Probe, Drift, Expansion, Warming, Limit,
    ];

    /// <summary>Causes that count as nothing when they are left empty.</summary>
    internal static IReadOnlyList<FigureField> Causes { get; } =
        [Square, BeamSideways, BeamUpright, RailSideways, RailUpright, RailsRise, BacklashX, BacklashY, BeltStiffness, Plate, Probe, Drift, Expansion];
}
