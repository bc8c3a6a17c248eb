namespace Proveout.Engine.Heat;

/// <summary>A thermistor by its resistance at 25 °C and its beta: R = R25·exp(β (1/T − 1/298.15 K)).</summary>
/// <remarks>Two numbers cannot follow a real part far from 25 °C: use <see cref="SteinhartHart"/> where its table is known. IEC 60539-1 defines both.</remarks>
/// <param name="OhmsAt25">Resistance at 25 °C in ohms, above zero.</param>
/// <param name="BetaKelvin">Beta in kelvin, above zero.</param>
public sealed record NtcBeta(double OhmsAt25, double BetaKelvin) : IResistanceCurve
{
    private const double Reference = 298.15;

    /// <inheritdoc/>
    public double LowestCelsius => -40;

    /// <inheritdoc/>
    public double HighestCelsius => 350;

    /// <inheritdoc/>
    public double OhmsAt(double celsius) => OhmsAt25 * Math.Exp(BetaKelvin * ((1 / Kelvin.Of(celsius)) - (1 / Reference)));

    /// <inheritdoc/>
    public double CelsiusAt(double ohms) => Kelvin.OfInverse((1 / Reference) + (Math.Log(ohms / OhmsAt25) / BetaKelvin));

    /// <summary>The beta in kelvin between two points of a part's table.</summary>
    public static double BetaBetween(double celsius, double ohms, double otherCelsius, double otherOhms) =>
        Math.Log(ohms / otherOhms) / ((1 / Kelvin.Of(celsius)) - (1 / Kelvin.Of(otherCelsius)));
}
