namespace Proveout.Engine.Electrical;

/// <summary>Voltage lost on conductors.</summary>
public static class LostVoltage
{
    /// <summary>From 20 °C to 70 °C, the limit of PVC: (234.5 + 70)/254.5, IEC 60228 annex A.</summary>
    public const double WarmFactor = 304.5 / 254.5;

    // IEC 60364-5-52 annex G: 1.25 times the resistivity at 20 °C, and the reactance of a conductor.
    private const double OhmSquareMillimetresPerMetre = 0.0225;
    private const double ReactanceOhmsPerMetre = 0.08e-3;

    /// <summary>Volts lost there and back on an alternating single-phase circuit: IEC 60364-5-52 annex G, u = 2(ρ·L/S·cos φ + λ·L·sin φ)·I.</summary>
    /// <param name="metres">Length of one way.</param>
    /// <param name="squareMillimetres">Cross-section.</param>
    /// <param name="amperes">Current.</param>
    /// <param name="powerFactor">cos φ.</param>
    public static double OfSinglePhase(double metres, double squareMillimetres, double amperes, double powerFactor) =>
        2 * amperes * metres * ((OhmSquareMillimetresPerMetre / squareMillimetres * powerFactor)
            + (ReactanceOhmsPerMetre * Math.Sqrt(1 - (powerFactor * powerFactor))));
}
