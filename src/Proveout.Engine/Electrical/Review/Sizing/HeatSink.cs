namespace Proveout.Engine.Electrical;

/// <summary>Temperature of an electronic switch by its thermal resistances, as its data sheet reckons.</summary>
public static class HeatSink
{
    /// <summary>From base to heat sink with paste, in K/W: 0.1 to 0.2, common practice.</summary>
    public const double BaseToSink = 0.2;

    /// <summary>Temperature of the junction in °C: Tj = Ta + P (Rjc + Rcs + Rsa).</summary>
    public static double Junction(double ambient, double watts, double junctionToBase, double baseToSink, double sinkToAir) =>
        ambient + (watts * (junctionToBase + baseToSink + sinkToAir));

    /// <summary>Largest thermal resistance of the heat sink to the air in K/W that keeps the junction at a temperature; zero or less when none does.</summary>
    public static double MostSinkToAir(double junction, double ambient, double watts, double junctionToBase, double baseToSink) =>
        ((junction - ambient) / watts) - junctionToBase - baseToSink;
}
