using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Resistance of copper conductors from cross-section and length.</summary>
internal static class ConductorResistance
{
    /// <summary>Resistivity of annealed copper at 20 °C in ohm square millimetres per metre: 1/58, IEC 60028:1925.</summary>
    public const double CopperOhmSquareMillimetresPerMetre = 1.0 / 58;

    // 10 °C to 35 °C by R20 (1 + 0.00393 (t - 20)), IEC 60204-1:2005 annex G.
    private const double ColdFactor = 1 - (0.00393 * 10);
    private const double WarmFactor = 1 + (0.00393 * 15);

    // Cross-section in square millimetres, greatest resistance at 20 °C in ohms per kilometre: IEC 60228 table 3, class 5, plain copper.
    private static readonly (double SquareMillimetres, double OhmsPerKilometre)[] ClassFive =
    [
        (0.5, 39.0), (0.75, 26.0), (1.0, 19.5), (1.5, 13.3), (2.5, 7.98), (4, 4.95), (6, 3.30), (10, 1.91),
    ];

    /// <summary>Greatest resistance at 20 °C of a flexible (class 5) conductor in ohms per kilometre.</summary>
    /// <remarks>
    /// IEC 60228 gives sizes from 0.5 mm²; for any other, solid copper of the cross-section times 1.157, the largest ratio in its table.
    /// </remarks>
    public static double MaximumOhmsPerKilometre(double squareMillimetres)
    {
        foreach (var (size, ohms) in ClassFive)
            if (Math.Abs(size - squareMillimetres) < 1e-6)
                return ohms;
        return 1.157 * 1000 * CopperOhmSquareMillimetresPerMetre / squareMillimetres;
    }

    /// <summary>The band of a conductor's resistance in a workshop between 10 °C and 35 °C.</summary>
    public static (double LowOhms, double NominalOhms, double HighOhms) Band(Conductor conductor)
    {
        var metres = conductor.Length.Meters;
        var squareMillimetres = conductor.CrossSection.SquareMillimeters;
        var solid = CopperOhmSquareMillimetresPerMetre * metres / squareMillimetres;
        var greatest = MaximumOhmsPerKilometre(squareMillimetres) * metres / 1000;
        return (solid * ColdFactor, greatest, greatest * WarmFactor);
    }
}
