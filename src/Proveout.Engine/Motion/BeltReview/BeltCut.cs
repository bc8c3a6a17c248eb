namespace Proveout.Engine.Motion;

/// <summary>What to cut of a belt, and what to trim later.</summary>
/// <param name="PathMm">Length of its pitch line.</param>
/// <param name="CutMm">Length to cut, rounded up to a whole tooth, with a tail at each end; of a loop its length.</param>
/// <param name="TrimMm">What to trim at each end once tension is set and has settled.</param>
/// <param name="Teeth">Teeth of what is cut.</param>
public sealed record BeltCut(double PathMm, double CutMm, double TrimMm, int Teeth)
{
    // Long enough for a second try, short enough to reach nothing that turns (common practice: 10 mm secured).
    private const double KeptMm = 10;

    /// <summary>Works it out.</summary>
    public static BeltCut Of(BeltLength length)
    {
        ArgumentNullException.ThrowIfNull(length);
        var belt = length.Belt;
        var tail = belt.Tail?.Millimeters ?? 0;
        // Rounding lengths apart, a whole tooth is not made two of.
        var teeth = belt.Closed
            ? (int)Math.Round(length.Teeth)
            : (int)Math.Ceiling(((length.LongestMm + (2 * tail)) / belt.Pitch.Millimeters) - 0.01);
        return new(length.LongestMm, teeth * belt.Pitch.Millimeters, belt.Closed ? 0 : Math.Max(0, tail - KeptMm), teeth);
    }
}
