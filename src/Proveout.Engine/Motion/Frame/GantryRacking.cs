namespace Proveout.Engine.Motion;

/// <summary>How far a gantry, pushed against its two stops, is from square to its rails.</summary>
/// <param name="LagMillimetres">By how much the right end stays behind the left when the left touches, in mm; negative when the left stays behind.</param>
/// <param name="SpanMillimetres">Distance of the two ends.</param>
public sealed record GantryRacking(Uncertain LagMillimetres, double SpanMillimetres)
{
    /// <summary>Most lag for each mm of span that counts as square: 0.1 mm in 200 mm (common practice).</summary>
    public const double LargestShare = 0.1 / 200;

    /// <summary>Of the gaps left at the two stops, in mm, each 0 where it touches.</summary>
    public static GantryRacking Of(Uncertain leftGap, Uncertain rightGap, double spanMillimetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spanMillimetres);
        return new(new(rightGap.Value - leftGap.Value, Uncertain.Combine(leftGap.Standard, rightGap.Standard)), spanMillimetres);
    }

    /// <summary>The angle, in rad.</summary>
    public Uncertain Angle => new(LagMillimetres.Value / SpanMillimetres, LagMillimetres.Standard / SpanMillimetres);
}
