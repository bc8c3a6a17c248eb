namespace Proveout.Workshop;

/// <summary>The figures that squareness of a frame asks for; leave out what was not measured.</summary>
public static class FrameFields
{
    /// <summary>Sides and diagonals, by the names of their ends.</summary>
    public static IReadOnlyList<FigureField> Distances { get; } =
    [
        Distance("ab", "Side A-B"), Distance("bc", "Side B-C"), Distance("cd", "Side C-D"), Distance("da", "Side D-A"),
        Distance("ac", "Diagonal A-C"), Distance("bd", "Diagonal B-D"),
    ];

    /// <summary>How well the tape is read.</summary>
    public static FigureField TapeError { get; } = new("tape-error", "Tape readings may be off by", "mm", 0.001, 10, "Half a division and how well the ends are found.", "0.5");

    /// <summary>Corners by a square, in the order A to D.</summary>
    public static IReadOnlyList<FigureField> Corners { get; } = [Corner("a"), Corner("b"), Corner("c"), Corner("d")];

    /// <summary>Leg of the square.</summary>
    public static FigureField Leg { get; } = new("leg", "Leg of the square", "mm", 10, 2000, "From the corner to where the gap was read.");

    /// <summary>How well gaps at the square are read.</summary>
    public static FigureField SquareError { get; } = new("square-error", "Gaps at the square may be off by", "mm", 0.001, 5, "The feeler's step and the square's own error.", "0.05");

    /// <summary>Heights of the corners, in the order A to D.</summary>
    public static IReadOnlyList<FigureField> Heights { get; } = [Height("a"), Height("b"), Height("c"), Height("d")];

    /// <summary>How well heights are read.</summary>
    public static FigureField HeightError { get; } = new("height-error", "Heights may be off by", "mm", 0.001, 5, "The feeler's step or the dial's error.", "0.05");

    /// <summary>Gap at the left stop.</summary>
    public static FigureField LeftGap { get; } = new("stop-left", "Gap at the left stop", "mm", 0, 50, "With the gantry pushed against both stops by hand; 0 where it touches.");

    /// <summary>Gap at the right stop.</summary>
    public static FigureField RightGap { get; } = new("stop-right", "Gap at the right stop", "mm", 0, 50, "The same on the right.");

    /// <summary>Distance of the stops.</summary>
    public static FigureField Span { get; } = new("span", "Distance of the two stops", "mm", 20, 5000, "From rail to rail.");

    /// <summary>How well gaps at the stops are read.</summary>
    public static FigureField StopError { get; } = new("stop-error", "Gaps at the stops may be off by", "mm", 0.001, 5, "The feeler's step.", "0.05");

    /// <summary>How well the dial is read.</summary>
    public static FigureField DialError { get; } = new("dial-error", "Dial readings may be off by", "mm", 0.0005, 1, "Half a division and how well the dial repeats.", "0.01");

    /// <summary>What counts as square.</summary>
    public static FigureField Limit { get; } = new("limit", "A corner counts as square within", "mm", 0.005, 5, "In 200 mm; 0.1 is good for a gantry, 0.3 bearable with correction (common practice).", "0.1");

    /// <summary>What counts as flat.</summary>
    public static FigureField TwistLimit { get; } = new("twist-limit", "A frame counts as flat within", "mm", 0.005, 10, "What one foot may stand off a flat slab; 0.2 mm is usual (common practice).", "0.2");

    /// <summary>What counts as a parallel and straight rail.</summary>
    public static FigureField RailLimit { get; } = new("rail-limit", "A rail counts as straight and parallel within", "mm", 0.002, 5, "Over the measured length; 0.05 mm is usual on desktop machines (common practice).", "0.05");

    /// <summary>What counts as in place, for corners in space.</summary>
    public static FigureField PlaceLimit { get; } = new("place-limit", "A corner in space counts as in place within", "mm", 0.01, 20, "0.5 mm is usual for sides of 300 to 500 mm (common practice).", "0.5");

    /// <summary>All of them, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } =
    [
        .. Distances, TapeError, .. Corners, Leg, SquareError, .. Heights, HeightError, LeftGap, RightGap, Span, StopError, DialError, Limit, TwistLimit, RailLimit, PlaceLimit,
    ];

    private static FigureField Distance(string name, string label) => new(name, label, "mm", 10, 10_000, "A is front left, B front right, C back right, D back left; between the same edges throughout.");

    private static FigureField Corner(string name) => new($"open-{name}", $"Gap at the square in corner {name.ToUpperInvariant()}", "mm", -50, 50, "At the end of the leg; positive when the corner is wider than the square, negative when it is narrower.");

    private static FigureField Height(string name) => new($"height-{name}", $"Height of corner {name.ToUpperInvariant()}", "mm", -1000, 1000, "Above a flat slab, or from a level line; only differences count.");
}
