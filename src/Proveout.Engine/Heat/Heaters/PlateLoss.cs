namespace Proveout.Engine.Heat;

/// <summary>A flat heated plate in still air: free convection and radiation from its top, its edges and its underside, or conduction through insulation there.</summary>
/// <remarks>
/// Correlations of free convection as textbooks print them (Y. A. Çengel, Heat and Mass Transfer, table 9-1): top 0.54 Ra^¼ up to 10⁷ and 0.15 Ra^⅓ above, underside 0.27 Ra^¼,
/// both with the characteristic length area over perimeter; edges as upright plates 0.59 Ra^¼. They are right to about a fifth.
/// </remarks>
/// <param name="WidthMetres">Width, above zero.</param>
/// <param name="DepthMetres">Depth, above zero.</param>
/// <param name="ThicknessMetres">Thickness, above zero.</param>
/// <param name="Emissivity">Emissivity of the surfaces, 0 to 1.</param>
/// <param name="InsulationWattsPerSquareMetreKelvin">Conductivity of the insulation below over its thickness; null for a bare underside.</param>
public sealed record PlateLoss(
    double WidthMetres, double DepthMetres, double ThicknessMetres, double Emissivity, double? InsulationWattsPerSquareMetreKelvin) : IHeatLoss
{
    private const double StefanBoltzmann = 5.670374419e-8;
    private const double Gravity = 9.80665;

    private double Area => WidthMetres * DepthMetres;

    private double Perimeter => 2 * (WidthMetres + DepthMetres);

    /// <inheritdoc/>
    public double WattsAt(double celsius, double ambientCelsius) =>
        TopWatts(celsius, ambientCelsius) + EdgeWatts(celsius, ambientCelsius) + UndersideWatts(celsius, ambientCelsius);

    /// <summary>Watts lost by the top.</summary>
    public double TopWatts(double celsius, double ambientCelsius) =>
        Area * (Convection(celsius, ambientCelsius, Area / Perimeter, rayleigh => rayleigh < 1e7 ? 0.54 * Math.Pow(rayleigh, 0.25) : 0.15 * Math.Cbrt(rayleigh)) + Radiation(celsius, ambientCelsius));

    /// <summary>Watts lost by the four edges.</summary>
    public double EdgeWatts(double celsius, double ambientCelsius) =>
        Perimeter * ThicknessMetres * (Convection(celsius, ambientCelsius, ThicknessMetres, rayleigh => 0.59 * Math.Pow(rayleigh, 0.25)) + Radiation(celsius, ambientCelsius));

    /// <summary>Watts lost by the underside.</summary>
    public double UndersideWatts(double celsius, double ambientCelsius) => InsulationWattsPerSquareMetreKelvin is { } through
        ? Area * through * (celsius - ambientCelsius)
        : Area * (Convection(celsius, ambientCelsius, Area / Perimeter, rayleigh => 0.27 * Math.Pow(rayleigh, 0.25)) + Radiation(celsius, ambientCelsius));

    // Watts for each square metre.
    private static double Convection(double celsius, double ambientCelsius, double length, Func<double, double> nusselt)
    {
        var difference = celsius - ambientCelsius;
        if (difference == 0)
            return 0;
        var film = (celsius + ambientCelsius) / 2;
        var air = AirFilm.At(film);
        var rayleigh = Gravity / Kelvin.Of(film) * Math.Abs(difference) * Math.Pow(length, 3) / (air.KinematicViscosity * air.KinematicViscosity) * air.Prandtl;
        return nusselt(rayleigh) * air.Conductivity / length * difference;
    }

    private double Radiation(double celsius, double ambientCelsius) =>
        Emissivity * StefanBoltzmann * (Math.Pow(Kelvin.Of(celsius), 4) - Math.Pow(Kelvin.Of(ambientCelsius), 4));
}
