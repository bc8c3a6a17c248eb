namespace Proveout.Engine.Heat;

/// <summary>One heater with every quantity at a value.</summary>
/// <param name="Watts">Power at full output.</param>
/// <param name="JoulesPerKelvin">Heat capacity.</param>
/// <param name="Loss">What it loses.</param>
/// <param name="LossShare">Factor on that.</param>
/// <param name="SensorLagSeconds">Time constant of the sensor.</param>
/// <param name="SeenShare">Share of the rise that the sensor comes to see.</param>
/// <param name="AmbientCelsius">Air around, and the start.</param>
public readonly record struct HeaterTrial(
    double Watts, double JoulesPerKelvin, IHeatLoss Loss, double LossShare, double SensorLagSeconds, double SeenShare, double AmbientCelsius)
{
    /// <summary>Watts lost at a temperature of what is heated.</summary>
    public double LossAt(double celsius) => LossShare * Loss.WattsAt(celsius, AmbientCelsius);

    /// <summary>Share of full output that holds a temperature; above 1 when it cannot be held.</summary>
    /// <param name="shownCelsius">The temperature that is shown.</param>
    public double HoldShare(double shownCelsius) => LossAt(AmbientCelsius + ((shownCelsius - AmbientCelsius) / SeenShare)) / Watts;
}
