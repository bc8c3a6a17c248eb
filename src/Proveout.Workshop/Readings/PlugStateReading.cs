namespace Proveout.Workshop;

/// <summary>What a meter shows between two terminals in one state of the plugs.</summary>
/// <param name="Both">The readings, with the state's cautions and instructions.</param>
/// <param name="Fits">Whether the resistance that was seen is right in this state; null when none was given.</param>
public sealed record PlugStateReading(BothWays Both, bool? Fits);
