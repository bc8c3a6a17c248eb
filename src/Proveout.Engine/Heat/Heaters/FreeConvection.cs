namespace Proveout.Engine.Heat;

/// <summary>Heat that a flat surface gives off to still air, in W/m², and by radiation.</summary>
/// <remarks>
/// Correlations as textbooks print them (Y. A. Çengel, Heat and Mass Transfer, table 9-1): facing up when hot 0.54 Ra^¼ up to 10⁷ and 0.15 Ra^⅓ above, facing down 0.27 Ra^¼, both with the
/// characteristic length area over perimeter; upright 0.59 Ra^¼ up to 10⁹ and 0.1 Ra^⅓ above, with the height. They are right to about a fifth.
/// </remarks>
internal static class FreeConvection
{
    private const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>Acceleration of free fall in m/s², ISO 80000-3.</summary>
    public const double Gravity = 9.80665;

    /// <summary>From a hot surface that faces up.</summary>
    public static double Up(double celsius, double airCelsius, double length) =>
        Flux(celsius, airCelsius, length, rayleigh => rayleigh < 1e7 ? 0.54 * Math.Pow(rayleigh, 0.25) : 0.15 * Math.Cbrt(rayleigh));

    /// <summary>From a hot surface that faces down.</summary>
    public static double Down(double celsius, double airCelsius, double length) => Flux(celsius, airCelsius, length, rayleigh => 0.27 * Math.Pow(rayleigh, 0.25));

    /// <summary>From an upright surface.</summary>
    public static double Upright(double celsius, double airCelsius, double height) =>
        Flux(celsius, airCelsius, height, rayleigh => rayleigh < 1e9 ? 0.59 * Math.Pow(rayleigh, 0.25) : 0.1 * Math.Cbrt(rayleigh));

    /// <summary>Radiation to surroundings of the air's temperature.</summary>
    public static double Radiation(double celsius, double airCelsius, double emissivity) =>
        emissivity * StefanBoltzmann * (Math.Pow(Kelvin.Of(celsius), 4) - Math.Pow(Kelvin.Of(airCelsius), 4));

    private static double Flux(double celsius, double airCelsius, double length, Func<double, double> nusselt)
    {
        var difference = celsius - airCelsius;
        if (difference == 0)
            return 0;
        var film = (celsius + airCelsius) / 2;
        var air = AirFilm.At(film);
        var rayleigh = Gravity / Kelvin.Of(film) * Math.Abs(difference) * Math.Pow(length, 3) / (air.KinematicViscosity * air.KinematicViscosity) * air.Prandtl;
        return nusselt(rayleigh) * air.Conductivity / length * difference;
    }
}
