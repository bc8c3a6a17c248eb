using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>How long protective devices take to interrupt, at most.</summary>
/// <remarks>
/// The slow edge of each characteristic, so that heat in conductors and time under touch voltage come out high. Between points the time falls along a
/// straight line on logarithmic scales; beyond the last it stays. IEC 60127-2 sheets 2 and 3, IEC 60898-1 table 7, ISO 8820-3, IEC 61008-1 table 1;
/// values from memory where reference tables were not at hand (ISO 8820-3, IEC 60898-1 between its points).
/// </remarks>
public static class TripCurves
{
    private static readonly (double Multiple, double Seconds)[] Quick = [(2.1, 1800), (2.75, 2), (4, 0.3), (10, 0.02)];
    private static readonly (double Multiple, double Seconds)[] TimeLag = [(2.1, 120), (2.75, 10), (4, 3), (10, 0.3), (50, 0.02)];
    private static readonly (double Multiple, double Seconds)[] Blade = [(1.35, 1800), (2, 5), (3.5, 0.5), (6, 0.1)];
    private static readonly (double Multiple, double Seconds)[] BreakerB = [(1.45, 3600), (2.55, 60), (4.999, 15), (5, 0.1)];
    private static readonly (double Multiple, double Seconds)[] BreakerC = [(1.45, 3600), (2.55, 60), (9.999, 8), (10, 0.1)];

    // IEC 61008-1 table 1, type without delay: multiples of the rated residual current.
    private static readonly (double Multiple, double Seconds)[] Residual = [(1, 0.3), (2, 0.15), (5, 0.04)];

    /// <summary>Longest time in seconds until a device interrupts; infinite when it need not.</summary>
    /// <param name="curve">Its characteristic.</param>
    /// <param name="multiple">Current over rated current.</param>
    public static double SecondsAt(FuseCurve curve, double multiple) => curve switch
    {
        FuseCurve.Quick => Read(Quick, multiple),
        FuseCurve.TimeLag => Read(TimeLag, multiple),
        FuseCurve.Blade => Read(Blade, multiple),
        FuseCurve.BreakerB => Read(BreakerB, multiple),
        FuseCurve.BreakerC => Read(BreakerC, multiple),
        _ => double.PositiveInfinity,
    };

    /// <summary>Longest time in seconds until a residual-current device without delay interrupts; infinite when it need not.</summary>
    /// <param name="multiple">Residual current over rated residual current.</param>
    public static double ResidualSecondsAt(double multiple) => Read(Residual, multiple);

    private static double Read((double Multiple, double Seconds)[] points, double multiple)
    {
        if (multiple < points[0].Multiple)
            return double.PositiveInfinity;
        for (var at = 1; at < points.Length; at++)
            if (multiple < points[at].Multiple)
            {
                var (below, above) = (points[at - 1], points[at]);
                var share = Math.Log(multiple / below.Multiple) / Math.Log(above.Multiple / below.Multiple);
                return below.Seconds * Math.Pow(above.Seconds / below.Seconds, share);
            }

        return points[^1].Seconds;
    }
}
