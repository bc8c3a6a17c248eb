namespace Proveout.Engine.Machine;

/// <summary>Heat that goes to the air for each kelvin of difference.</summary>
/// <param name="WattsPerKelvin">Its value in W/K.</param>
public readonly record struct HeatPassage(double WattsPerKelvin);
