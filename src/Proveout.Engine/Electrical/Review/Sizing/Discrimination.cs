using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Up to which current the nearer of two protective devices in series surely acts first.</summary>
public static class Discrimination
{
    // The quick edge: multiples of the rated current and seconds below which a device does not act. IEC 60127-2 sheets 2 and 3; IEC 60898-1 table 7 (1 s at
    // 2.55, instantaneous from 3 and 5); ISO 8820-3 from memory. Beyond the last point a device may act at once.
    private static readonly (double Multiple, double Seconds)[] Quick = [(1.5, 3600), (2.75, 0.05), (4, 0.01)];
    private static readonly (double Multiple, double Seconds)[] TimeLag = [(1.5, 3600), (2.75, 0.6), (4, 0.15), (10, 0.02)];
    private static readonly (double Multiple, double Seconds)[] Blade = [(1.1, 360000), (1.35, 0.75), (2, 0.15), (3.5, 0.04), (6, 0.02)];
    private static readonly (double Multiple, double Seconds)[] BreakerB = [(1.13, 3600), (2.55, 1), (3, 0.01)];
    private static readonly (double Multiple, double Seconds)[] BreakerC = [(1.13, 3600), (2.55, 1), (5, 0.01)];

    private const double Step = 1.02;
    private const double MostMultiple = 100;

    /// <summary>Shortest time in seconds before which a device does not act; zero when it may act at once.</summary>
    public static double LeastSeconds(FuseCurve curve, double multiple)
    {
        var points = curve switch
        {
            FuseCurve.Quick => Quick,
            FuseCurve.TimeLag => TimeLag,
            FuseCurve.BreakerB => BreakerB,
            FuseCurve.BreakerC => BreakerC,
            _ => Blade,
        };
        if (multiple < points[0].Multiple)
            return double.PositiveInfinity;
        // Between two points of a standard nothing is promised but what the next one says.
        foreach (var (at, seconds) in points)
            if (multiple <= at)
                return seconds;
        return 0;
    }

    /// <summary>Largest current in amperes up to which the nearer device surely acts first; zero when it does so at none.</summary>
    public static double UpTo(FuseCurve far, double farAmperes, FuseCurve near, double nearAmperes)
    {
        var found = 0.0;
        for (var multiple = 1.5; multiple <= MostMultiple; multiple *= Step)
        {
            var amperes = multiple * nearAmperes;
            var slowest = TripCurves.SecondsAt(near, multiple);
            var quickest = LeastSeconds(far, amperes / farAmperes);
            if (double.IsPositiveInfinity(slowest) ? !double.IsPositiveInfinity(quickest) : quickest <= slowest)
                return found;
            found = amperes;
        }

        return found;
    }
}
