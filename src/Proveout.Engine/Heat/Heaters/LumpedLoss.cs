namespace Proveout.Engine.Heat;

/// <summary>A loss in proportion to the difference of temperatures: small blocks in socks, air blown over a body.</summary>
/// <param name="WattsPerKelvin">Watts for each kelvin, zero or above.</param>
public sealed record LumpedLoss(double WattsPerKelvin) : IHeatLoss
{
    /// <inheritdoc/>
    public double WattsAt(double celsius, double ambientCelsius) => WattsPerKelvin * (celsius - ambientCelsius);
}
