namespace Proveout.Engine.Motion;

/// <summary>Ratios of length that a wrong part or setting makes, and no wear or warmth.</summary>
/// <param name="Ratio">Length as made over length as wanted.</param>
/// <param name="Words">What makes it.</param>
public sealed record ScaleCause(double Ratio, string Words)
{
    // A piece may shrink by this besides.
    private const double Slack = 0.006;

    private static readonly ScaleCause[] All =
    [
        new(0.5, "half: the driver divides steps twice as finely as is set, or a pulley has half the teeth"),
        new(2, "double: the driver divides steps half as finely as is set, or a pulley has twice the teeth"),
        new(0.8, "16 to 20: a pulley has 16 teeth where 20 are set"),
        new(1.25, "20 to 16: a pulley has 20 teeth where 16 are set"),
        new(1.016, "2.032 to 2: a belt and pulley of 0.08 inch pitch where 2 mm is set"),
        new(1 / 1.016, "2 to 2.032: a belt and pulley of 2 mm pitch where 0.08 inch is set"),
    ];

    /// <summary>The cause of a ratio; null when none fits.</summary>
    /// <param name="ratio">Length as made over length as wanted.</param>
    /// <param name="expanded">Its expanded uncertainty.</param>
    public static ScaleCause? Of(double ratio, double expanded) =>
        All.FirstOrDefault(cause => Math.Abs(ratio - cause.Ratio) <= Math.Min(Slack, expanded + 0.001) * cause.Ratio && Math.Abs(ratio - 1) > expanded);
}
