namespace Proveout.Workshop;

/// <summary>A loop at a time.</summary>
/// <param name="Seconds">The time.</param>
/// <param name="Celsius">What is shown.</param>
/// <param name="OutputPercent">The output.</param>
public sealed record ResponsePoint(double Seconds, double Celsius, double OutputPercent);
