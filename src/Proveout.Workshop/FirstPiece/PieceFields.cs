using System.Globalization;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>The figures that the first test piece asks for; leave out what was not measured.</summary>
public static class PieceFields
{
    /// <summary>Travel along X.</summary>
    public static FigureField TravelX { get; } = new("travel-x", "Travel along X", "mm", 60, 5000, "How far the tool moves over the plate.", "220");

    /// <summary>Travel along Y.</summary>
    public static FigureField TravelY { get; } = new("travel-y", "Travel along Y", "mm", 60, 5000, "How far it moves to the back.", "220");

    /// <summary>Travel along Z.</summary>
    public static FigureField TravelZ { get; } = new("travel-z", "Travel along Z", "mm", 5, 5000, "How high it rises.", "200");

    /// <summary>Largest length that the calliper spans.</summary>
    public static FigureField Reach { get; } = new("reach", "Longest length the calliper spans", "mm", 60, 1000, "150 mm is usual.", "150");

    /// <summary>Size of the piece that was made.</summary>
    public static FigureField Ring { get; } = new("ring", "Size of the double ring", "mm", TestPieceSize.LeastRingMm, TestPieceSize.MostRingMm, "Only to judge or draw a piece of that size; else the largest that fits.");

    /// <summary>Thickness of the double ring.</summary>
    public static FigureField Thickness { get; } = new("thickness", "Thickness of the double ring", "mm", 0.5, 30, "5 mm is stiff and leaves room for the jaws.", "5");

    /// <summary>Width of a laid line.</summary>
    public static FigureField Line { get; } = new("line", "Width of one laid line", "mm", 0.1, 3, "As set where parts are prepared; the single wall is one line.", "0.45");

    /// <summary>Height of a layer.</summary>
    public static FigureField Layer { get; } = new("layer", "Height of a layer", "mm", 0.02, 1, "Heights of the piece are whole layers.", "0.2");

    /// <summary>What shapes the piece.</summary>
    public static IReadOnlyList<FigureField> Shape { get; } = [TravelX, TravelY, TravelZ, Reach, Ring, Thickness, Line, Layer];

    /// <summary>Step of the calliper.</summary>
    public static FigureField Step { get; } = new("step", "Step of the calliper", "mm", 0.0001, 0.5, "What its last digit or line counts.", "0.01");

    /// <summary>Limit of error of the calliper.</summary>
    public static FigureField CalliperError { get; } = new("calliper-error", "The calliper may be off by", "mm", 0.0005, 1, "From its sheet; 0.03 mm is usual up to 150 mm (ISO 13385-1, from memory).", "0.03");

    /// <summary>How well a reading repeats.</summary>
    public static FigureField Repeat { get; } = new("repeat", "A reading repeats within", "mm", 0.001, 1, "Counts only while too few readings check each other.", "0.05");

    /// <summary>Readings with closed jaws.</summary>
    public static FigureField Closed { get; } = new("closed", "Readings with the jaws closed", "mm", -5, 5, "Wipe the jaws, close them five times, and write each reading, blanks between.");

    /// <summary>Length of a gauge block.</summary>
    public static FigureField Block { get; } = new("block", "Length of a gauge block", "mm", 1, 500, "As marked.");

    /// <summary>Error of the block.</summary>
    public static FigureField BlockError { get; } = new("block-error", "The block may be off by", "mm", 0.00005, 0.1, "From its sheet; a ground pin or a bearing ring will do within its tolerance.", "0.001");

    /// <summary>Readings at the block.</summary>
    public static FigureField BlockOne { get; } = new("block-one", "Readings at the block", "mm", 0.5, 600, "Several, blanks between.");

    /// <summary>Readings at the block the other way.</summary>
    public static FigureField BlockOther { get; } = new("block-other", "Readings at the block, calliper turned round", "mm", 0.5, 600, "The jaws change sides.");

    /// <summary>Temperature of the piece.</summary>
    public static FigureField PieceTemperature { get; } = new("piece-temp", "Temperature of the piece", "°C", -20, 150, "When it was measured; let it cool for an hour.", "20");

    /// <summary>Temperature of the calliper.</summary>
    public static FigureField CalliperTemperature { get; } = new("calliper-temp", "Temperature of the calliper", "°C", -20, 60, "That of the room.", "20");

    /// <summary>Error of both.</summary>
    public static FigureField TemperatureError { get; } = new("temp-error", "Both temperatures may be off by", "K", 0.1, 50, "2 K for a room that nobody watches.", "2");

    /// <summary>Expansion of the piece.</summary>
    public static FigureField Expansion { get; } = new("expansion", "Expansion of the piece", "µm/m/K", 0, 300, "Plastics 60 to 100, aluminium 23, steel 12 (from memory).", "70");

    /// <summary>Error of it.</summary>
    public static FigureField ExpansionError { get; } = new("expansion-error", "The expansion may be off by", "µm/m/K", 0, 200, "Plastics differ by a third.", "20");

    /// <summary>The calliper and warmth.</summary>
    public static IReadOnlyList<FigureField> Calliper { get; } =
        [Step, CalliperError, Repeat, Closed, Block, BlockError, BlockOne, BlockOther, PieceTemperature, CalliperTemperature, TemperatureError, Expansion, ExpansionError];

    /// <summary>What the feeder was told to take.</summary>
    public static FigureField Told { get; } = new("told", "Length the feeder was told to take", "mm", 10, 2000, "The same in every run.", "100");

    /// <summary>Mark before.</summary>
    public static FigureField Before { get; } = new("mark-before", "Mark to the feeder before each run", "mm", 0, 3000, "Mark the filament 120 mm above where it enters; write a reading for each run, blanks between.");

    /// <summary>Mark after.</summary>
    public static FigureField After { get; } = new("mark-after", "Mark to the feeder after each run", "mm", -100, 3000, "As many as before, in the same order.");

    /// <summary>Division of the rule.</summary>
    public static FigureField Division { get; } = new("division", "Division of the rule", "mm", 0.005, 5, "Half of it if you read between the lines.", "0.5");

    /// <summary>Error of the rule.</summary>
    public static FigureField RuleError { get; } = new("rule-error", "The rule may be off by", "mm", 0.001, 5, "Over the length that was fed; 0.2 mm for a steel rule with a worn end (common practice).", "0.2");

    /// <summary>Steps now.</summary>
    public static FigureField FeedSteps { get; } = new("feed-steps", "Steps for each mm of feed, as set now", "", 1, 100_000, "Leave it empty and a factor is given.");

    /// <summary>What counts as right.</summary>
    public static FigureField FeedLimit { get; } = new("feed-limit", "The feed counts as right within", "%", 0.1, 20, "1 to 2 % is good (common practice).", "1");

    /// <summary>The feeder.</summary>
    public static IReadOnlyList<FigureField> Feed { get; } = [Told, Before, After, Division, RuleError, FeedSteps, FeedLimit];

    /// <summary>Wall thickness.</summary>
    public static FigureField Wall { get; } = new("wall", "Thickness of the single wall", "mm", 0.05, 10, "At six places or more, away from the corners and the seam; blanks between.");

    /// <summary>Flow now.</summary>
    public static FigureField Flow { get; } = new("flow", "Flow as set now", "%", 20, 300, "Where parts are prepared.", "100");

    /// <summary>What counts as right.</summary>
    public static FigureField WallLimit { get; } = new("wall-limit", "The wall counts as right within", "mm", 0.002, 1, "0.03 mm is usual (common practice).", "0.03");

    /// <summary>The last finger that came out clean.</summary>
    public static FigureField Lean { get; } = new("lean", "Furthest leaning finger that came out clean", "°", 0, 70, "30, 40, 50, 60 or 70 degrees from upright; 0 when none did.");

    /// <summary>The wall and the fingers.</summary>
    public static IReadOnlyList<FigureField> Walls { get; } = [Wall, Flow, WallLimit, Lean];

    /// <summary>What counts as right along an axis.</summary>
    public static FigureField ScaleLimit { get; } = new("scale-limit", "A length counts as right within", "mm", 0.005, 10, "In 100 mm; 0.2 is usual for a first piece (common practice).", "0.2");

    /// <summary>What counts as square.</summary>
    public static FigureField SkewLimit { get; } = new("skew-limit", "An axis counts as square within", "mm", 0.005, 10, "In 100 mm; 0.14 makes the diagonals of a 100 mm square differ by 0.2 mm.", "0.14");

    /// <summary>What growth counts as none.</summary>
    public static FigureField GrowthLimit { get; } = new("growth-limit", "Walls and heights count as right within", "mm", 0.005, 5, "Both sides together; 0.1 is usual (common practice).", "0.1");

    /// <summary>Shrinkage of the material.</summary>
    public static FigureField Shrinkage { get; } = new("shrinkage", "Shrinkage of the material", "%", 0, 10, "From its sheet; leave it empty when it is not known.");

    /// <summary>Error of it.</summary>
    public static FigureField ShrinkageError { get; } = new("shrinkage-error", "The shrinkage may be off by", "%", 0, 5, "A quarter of it, if the sheet does not say.", "0.1");

    /// <summary>Steps along the axes as set now.</summary>
    public static IReadOnlyList<FigureField> AxisSteps { get; } = [StepsOf("x"), StepsOf("y"), StepsOf("z")];

    /// <summary>How lengths are judged.</summary>
    public static IReadOnlyList<FigureField> Size { get; } = [ScaleLimit, SkewLimit, GrowthLimit, Shrinkage, ShrinkageError, .. AxisSteps];

    /// <summary>All of them but the numbered measures, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } = [.. Shape, .. Size, .. Calliper, .. Feed, .. Walls];

    /// <summary>Name of the field of a numbered measure.</summary>
    public static string MeasureName(string number) => $"measure-{number}";

    internal static FigureField Measure(PieceMeasure measure) => new(
        MeasureName(measure.Number.ToString(CultureInfo.InvariantCulture)), string.Create(CultureInfo.InvariantCulture, $"{measure.Number}: {measure.Words}"), "mm", 0.05, 1000, string.Create(CultureInfo.InvariantCulture, $"Drawn as {measure.NominalMm:0.##} mm."));

    private static FigureField StepsOf(string axis) => new($"steps-{axis}", $"Steps for each mm of {axis.ToUpperInvariant()}, as set now", "", 0.1, 100_000, "Leave it empty and a factor is given.");
}
