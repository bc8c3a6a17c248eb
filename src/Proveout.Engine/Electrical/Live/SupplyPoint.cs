namespace Proveout.Engine.Electrical;

/// <summary>How a source of direct voltage fares.</summary>
/// <param name="Part">Designation of its part.</param>
/// <param name="Name">Its name on the part.</param>
/// <param name="IsAlive">True when it is fed.</param>
/// <param name="IsLimiting">True when it holds its limit and its voltage has dropped.</param>
/// <param name="Volts">Voltage at its poles.</param>
/// <param name="Amperes">Current that it gives.</param>
public sealed record SupplyPoint(string Part, string Name, bool IsAlive, bool IsLimiting, double Volts, double Amperes);
