namespace Proveout.Workshop;

/// <summary>The figures that levelling asks for.</summary>
public static class LevelFields
{
    /// <summary>Spacing of a grid without headings, along x.</summary>
    public static FigureField SpacingX { get; } = new("spacing-x", "Spacing of the grid along x", "mm", 1, 1000, "Only for a grid of heights without headings.");

    /// <summary>Spacing along y.</summary>
    public static FigureField SpacingY { get; } = new("spacing-y", "Spacing of the grid along y", "mm", 1, 1000, "The same along y; the first row is the front one.");

    /// <summary>How well heights are probed.</summary>
    public static FigureField ProbeError { get; } = new("probe-error", "Probed heights may be off by", "mm", 0.0005, 1, "Twice the standard deviation of repeated readings; 0.01 mm is usual.", "0.01");

    /// <summary>Pitch of the screws.</summary>
    public static FigureField Pitch { get; } = new("pitch", "Pitch of the screws", "mm", 0.1, 10, "0.5 mm for M3, 0.7 mm for M4, 0.8 mm for M5 (ISO 261); leave it empty for lift motors.");

    /// <summary>What counts as level.</summary>
    public static FigureField Limit { get; } = new("limit", "The plate counts as level within", "mm", 0.005, 5, "Highest less lowest point; 0.3 mm is bearable with a height map (common practice).", "0.3");

    /// <summary>How well the mean of repeated readings shall be known.</summary>
    public static FigureField MeanWithin { get; } = new("mean-within", "Know a height within", "mm", 0.0005, 1, "For the number of readings to average.", "0.005");

    /// <summary>All of them, in the order in which a page asks.</summary>
    public static IReadOnlyList<FigureField> All { get; } = [SpacingX, SpacingY, ProbeError, Pitch, Limit, MeanWithin];
}
