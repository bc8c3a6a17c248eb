namespace Proveout.Engine.Faults;

/// <summary>How the bench stands before a check.</summary>
/// <param name="SetUp">The set-up that stands; null for none.</param>
/// <param name="Kind">Kind of check that the meter is set to; null when it is not set.</param>
/// <param name="Red">Where the red lead is; null when it lies down.</param>
/// <param name="Black">Where the black lead is; null when it lies down.</param>
public sealed record LeadPlacement(string? SetUp, string? Kind, CheckPoint? Red, CheckPoint? Black)
{
    /// <summary>Nothing set up, nothing set, no lead anywhere.</summary>
    public static LeadPlacement Empty { get; } = new(null, null, null, null);

    /// <summary>How the bench stands after a check.</summary>
    /// <param name="check">The check.</param>
    /// <param name="swapped">True when it was done with the leads exchanged.</param>
    public LeadPlacement After(Check check, bool swapped = false) => check.Points.Count == 0
        ? new(check.SetUp, Kind, null, null)
        : new(check.SetUp, check.Kind, PointOf(check, swapped ? 1 : 0), PointOf(check, swapped ? 0 : 1));

    private static CheckPoint? PointOf(Check check, int place) => place < check.Points.Count ? check.Points[place] : null;
}
