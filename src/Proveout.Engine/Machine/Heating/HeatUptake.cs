namespace Proveout.Engine.Machine;

/// <summary>Heat capacity of a body.</summary>
/// <param name="JoulesPerKelvin">Its value in J/K.</param>
public readonly record struct HeatUptake(double JoulesPerKelvin);
