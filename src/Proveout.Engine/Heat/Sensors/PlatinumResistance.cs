namespace Proveout.Engine.Heat;

/// <summary>An industrial platinum sensor after IEC 60751 (Callendar and Van Dusen): R = R0 (1 + A t + B t² + C (t − 100) t³), the last term below 0 °C only.</summary>
/// <param name="OhmsAt0">Resistance at 0 °C in ohms: 100 for Pt100, 1000 for Pt1000.</param>
public sealed record PlatinumResistance(double OhmsAt0) : IResistanceCurve
{
    private const double A = 3.9083e-3;
    private const double B = -5.775e-7;
    private const double C = -4.183e-12;

    /// <inheritdoc/>
    public double LowestCelsius => -200;

    /// <inheritdoc/>
    public double HighestCelsius => 850;

    /// <inheritdoc/>
    public double OhmsAt(double celsius) => OhmsAt0 * Ratio(celsius);

    /// <inheritdoc/>
    /// <remarks>Above the range the parabola is followed to its top, which lies far above what platinum bears.</remarks>
    public double CelsiusAt(double ohms)
    {
        var ratio = ohms / OhmsAt0;
        if (ratio >= 1)
            return (-A + Math.Sqrt(Math.Max(0, (A * A) - (4 * B * (1 - ratio))))) / (2 * B);
        // Newton from the parabola's root: the fourth power is a small correction, and three steps are exact to the last digits.
        var celsius = (-A + Math.Sqrt((A * A) - (4 * B * (1 - ratio)))) / (2 * B);
        for (var step = 0; step < 4; step++)
            celsius -= (Ratio(celsius) - ratio) / Slope(celsius);
        return celsius;
    }

    /// <summary>Tolerance in K either way of class B: 0.30 + 0.005 |t| (IEC 60751:2022 table 3).</summary>
    public static double ClassB(double celsius) => 0.30 + (0.005 * Math.Abs(celsius));

    /// <summary>Tolerance in K either way of class A: 0.15 + 0.002 |t|.</summary>
    public static double ClassA(double celsius) => 0.15 + (0.002 * Math.Abs(celsius));

    private static double Ratio(double celsius) =>
        1 + (celsius * (A + (B * celsius))) + (celsius < 0 ? C * (celsius - 100) * celsius * celsius * celsius : 0);

    private static double Slope(double celsius) =>
        A + (2 * B * celsius) + (celsius < 0 ? C * celsius * celsius * ((4 * celsius) - 300) : 0);
}
