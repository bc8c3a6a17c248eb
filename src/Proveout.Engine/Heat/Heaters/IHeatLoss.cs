namespace Proveout.Engine.Heat;

/// <summary>What a hot body loses.</summary>
public interface IHeatLoss
{
    /// <summary>Watts lost, rising with the temperature of the body; zero when both are equal.</summary>
    /// <param name="celsius">Temperature of the body in °C.</param>
    /// <param name="ambientCelsius">Temperature of the air and the walls around in °C.</param>
    double WattsAt(double celsius, double ambientCelsius);
}
