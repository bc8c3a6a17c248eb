namespace Proveout.Engine.Heat;

/// <summary>An electronic switch on its heat sink: temperatures along the way of its heat, by thermal resistances as data sheets reckon.</summary>
/// <param name="Watts">Heat that it makes.</param>
/// <param name="JunctionToBase">From junction to base in K/W.</param>
/// <param name="BaseToSink">From base to heat sink in K/W: 0.1 to 0.2 with paste, common practice.</param>
/// <param name="SinkToAir">From heat sink to air in K/W.</param>
public sealed record SwitchOnSink(double Watts, double JunctionToBase, double BaseToSink, double SinkToAir)
{
    /// <summary>From base to heat sink with paste, in K/W.</summary>
    public const double WithPaste = 0.2;

    /// <summary>Heat of two thyristors back to back in a full sine: threshold voltage times mean current, and slope resistance times the square of the effective current.</summary>
    /// <param name="thresholdVolts">Threshold voltage.</param>
    /// <param name="slopeOhms">Slope resistance.</param>
    /// <param name="amperes">Effective current.</param>
    public static double WattsOfSine(double thresholdVolts, double slopeOhms, double amperes) =>
        (thresholdVolts * 2 * Math.Sqrt(2) / Math.PI * amperes) + (slopeOhms * amperes * amperes);

    /// <summary>Temperature of the heat sink in °C.</summary>
    public double SinkCelsius(double airCelsius) => airCelsius + (Watts * SinkToAir);

    /// <summary>Temperature of the base in °C.</summary>
    public double BaseCelsius(double airCelsius) => SinkCelsius(airCelsius) + (Watts * BaseToSink);

    /// <summary>Temperature of the junction in °C.</summary>
    public double JunctionCelsius(double airCelsius) => BaseCelsius(airCelsius) + (Watts * JunctionToBase);

    /// <summary>Largest thermal resistance in K/W from heat sink to air that keeps the junction at a temperature; zero or less when none does.</summary>
    public double MostSinkToAir(double junctionCelsius, double airCelsius) => ((junctionCelsius - airCelsius) / Watts) - JunctionToBase - BaseToSink;

    /// <summary>Warmest air in °C in which the junction stays below a temperature.</summary>
    public double BearsAirUpTo(double junctionCelsius) => junctionCelsius - (Watts * (JunctionToBase + BaseToSink + SinkToAir));
}
