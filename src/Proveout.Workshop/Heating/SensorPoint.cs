namespace Proveout.Workshop;

/// <summary>A sensor at a temperature.</summary>
/// <param name="Celsius">The temperature.</param>
/// <param name="LowOhms">Lowest resistance at the plug.</param>
/// <param name="HighOhms">Highest resistance at the plug.</param>
/// <param name="Percent">Share of the reference across it.</param>
/// <param name="LeastErrorKelvin">Lowest of what is shown less what is true.</param>
/// <param name="MostErrorKelvin">Highest of what is shown less what is true.</param>
/// <param name="StepKelvin">What one step of a converter of 12 bits is worth.</param>
public sealed record SensorPoint(double Celsius, double LowOhms, double HighOhms, double Percent, double LeastErrorKelvin, double MostErrorKelvin, double StepKelvin);
