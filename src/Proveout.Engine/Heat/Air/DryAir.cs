namespace Proveout.Engine.Heat;

/// <summary>Dry air as what carries heat out of a bay.</summary>
public static class DryAir
{
    private const double GasConstant = 287.05;
    private const double SeaLevelPascals = 101_325;

    /// <summary>Heat capacity in J/(kg·K): 1005 to 1009 between 0 °C and 100 °C, common tables; the least is on the safe side.</summary>
    public static Between JoulesPerKilogramKelvin { get; } = new(1005, 1010);

    /// <summary>Density at which data sheets give the curves of fans, in kg/m³: ISO 5801.</summary>
    public const double StandardDensity = 1.2;

    /// <summary>Pressure in Pa at a height above the sea: standard atmosphere, ISO 2533.</summary>
    public static double PascalsAt(double altitudeMetres) => SeaLevelPascals * Math.Pow(1 - (2.25577e-5 * altitudeMetres), 5.25588);

    /// <summary>Density in kg/m³ by the law of the perfect gas.</summary>
    public static double DensityAt(double celsius, double altitudeMetres) => PascalsAt(altitudeMetres) / (GasConstant * Kelvin.Of(celsius));
}
