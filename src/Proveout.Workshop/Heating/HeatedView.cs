namespace Proveout.Workshop;

/// <summary>One heated body.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Heater">Designation of its heater; may be empty.</param>
/// <param name="TargetCelsius">Temperature that it is held at.</param>
/// <param name="WattsPerSquareCentimetre">Power over area; null for a block.</param>
/// <param name="Seconds">Least and most time to the target at full output.</param>
/// <param name="HoldPercent">Least and most output that holds the target, in percent.</param>
/// <param name="Curve">The good curve: time in seconds, least and most that is shown in °C.</param>
/// <param name="Guard">What to set the controller's guard to; null when no guard can tell.</param>
/// <param name="Controller">Settings to start its controller with; null when it cannot hold its target.</param>
/// <param name="SensorName">The sensor, in words.</param>
/// <param name="SensorTable">Temperature in °C, resistance at the plug in ohms, share of the reference in percent, and error in K either way.</param>
/// <param name="Sensor">Checks of the sensor, and what each mistake would do.</param>
/// <param name="WarmUp">Readings of the first warm-up, and what each mistake would do.</param>
public sealed record HeatedView(
    string Name,
    string Heater,
    double TargetCelsius,
    double? WattsPerSquareCentimetre,
    (double Least, double Most) Seconds,
    (double Least, double Most) HoldPercent,
    IReadOnlyList<(double Seconds, double Least, double Most)> Curve,
    GuardView? Guard,
    ControllerView? Controller,
    string SensorName,
    IReadOnlyList<SensorPoint> SensorTable,
    MistakeTable Sensor,
    MistakeTable WarmUp);
