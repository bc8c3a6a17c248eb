namespace Proveout.Engine.Electrical;

/// <summary>Voltage lost on conductors.</summary>
public static class LostVoltage
{
    /// <summary>From 20 °C to 70 °C, the limit of PVC: (234.5 + 70)/254.5, IEC 60228 annex A.</summary>
    public const double WarmFactor = 304.5 / 254.5;

    /// <summary>Volts lost on flexible copper at 70 °C.</summary>
    /// <param name="metres">Length there and back.</param>
    /// <param name="squareMillimetres">Cross-section.</param>
    /// <param name="amperes">Current.</param>
    public static double OnWarmCopper(double metres, double squareMillimetres, double amperes) =>
        ConductorResistance.MaximumOhmsPerKilometre(squareMillimetres) / 1000 * metres * WarmFactor * amperes;
}
