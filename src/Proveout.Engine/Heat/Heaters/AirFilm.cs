namespace Proveout.Engine.Heat;

/// <summary>Dry air at one atmosphere, at the mean temperature of a surface and the room.</summary>
/// <param name="Conductivity">Thermal conductivity in W/(m·K).</param>
/// <param name="KinematicViscosity">Kinematic viscosity in m²/s.</param>
/// <param name="Prandtl">Prandtl number.</param>
internal readonly record struct AirFilm(double Conductivity, double KinematicViscosity, double Prandtl)
{
    private const double Pressure = 101_325;
    private const double GasConstant = 287.05;
    private const double HeatCapacity = 1007;

    /// <summary>By Sutherland's formulas (F. M. White, Viscous Fluid Flow, table 1-2 and 1-3); within 2 % of printed tables from -20 °C to 300 °C.</summary>
    public static AirFilm At(double celsius)
    {
        var kelvin = Kelvin.Of(celsius);
        var viscosity = 1.716e-5 * Math.Pow(kelvin / 273, 1.5) * (273 + 111) / (kelvin + 111);
        var conductivity = 0.0241 * Math.Pow(kelvin / 273, 1.5) * (273 + 194) / (kelvin + 194);
        return new(conductivity, viscosity * GasConstant * kelvin / Pressure, viscosity * HeatCapacity / conductivity);
    }
}
