namespace Proveout.Workshop;

/// <summary>What was shown at one moment, read by a person.</summary>
/// <param name="Seconds">Since the first reading, by the bench's clock.</param>
/// <param name="Celsius">What display or thermometer showed, in degrees Celsius.</param>
/// <param name="IsFull">True from when the heater is told to run at full output.</param>
public sealed record HandLogRow(double Seconds, double Celsius, bool IsFull);
