namespace Proveout.Engine.Heat;

/// <summary>A flat heated plate in still air: free convection and radiation from its top, its edges and its underside, or conduction through insulation there.</summary>
/// <param name="WidthMetres">Width, above zero.</param>
/// <param name="DepthMetres">Depth, above zero.</param>
/// <param name="ThicknessMetres">Thickness, above zero.</param>
/// <param name="Emissivity">Emissivity of the surfaces, 0 to 1.</param>
/// <param name="InsulationWattsPerSquareMetreKelvin">Conductivity of the insulation below over its thickness; null for a bare underside.</param>
public sealed record PlateLoss(
    double WidthMetres, double DepthMetres, double ThicknessMetres, double Emissivity, double? InsulationWattsPerSquareMetreKelvin) : IHeatLoss
{
    private double Area => WidthMetres * DepthMetres;

    private double Perimeter => 2 * (WidthMetres + DepthMetres);

    /// <inheritdoc/>
    public double WattsAt(double celsius, double ambientCelsius) =>
        TopWatts(celsius, ambientCelsius) + EdgeWatts(celsius, ambientCelsius) + UndersideWatts(celsius, ambientCelsius);

    /// <summary>Watts lost by the top.</summary>
    public double TopWatts(double celsius, double ambientCelsius) => Area * (FreeConvection.Up(celsius, ambientCelsius, Area / Perimeter) + Radiation(celsius, ambientCelsius));

    /// <summary>Watts lost by the four edges.</summary>
    public double EdgeWatts(double celsius, double ambientCelsius) =>
        Perimeter * ThicknessMetres * (FreeConvection.Upright(celsius, ambientCelsius, ThicknessMetres) + Radiation(celsius, ambientCelsius));

    /// <summary>Watts lost by the underside.</summary>
    public double UndersideWatts(double celsius, double ambientCelsius) => InsulationWattsPerSquareMetreKelvin is { } through
        ? Area * through * (celsius - ambientCelsius)
        : Area * (FreeConvection.Down(celsius, ambientCelsius, Area / Perimeter) + Radiation(celsius, ambientCelsius));

    private double Radiation(double celsius, double ambientCelsius) => FreeConvection.Radiation(celsius, ambientCelsius, Emissivity);
}
