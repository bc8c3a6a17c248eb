namespace Proveout.Engine.Heat;

/// <summary>Between °C and K.</summary>
internal static class Kelvin
{
    public const double Zero = 273.15;

    public static double Of(double celsius) => celsius + Zero;

    /// <summary>°C of a reciprocal of kelvin; infinite when the curve has left every temperature, as at a short.</summary>
    public static double OfInverse(double inverse) => inverse > 0 ? ToCelsius(1 / inverse) : double.PositiveInfinity;

    public static double ToCelsius(double kelvin) => kelvin - Zero;
}
