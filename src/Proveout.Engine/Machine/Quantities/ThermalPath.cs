namespace Proveout.Engine.Machine;

/// <summary>Thermal resistance: how much warmer one end is for each watt that flows.</summary>
/// <param name="KelvinsPerWatt">Its value in K/W.</param>
public readonly record struct ThermalPath(double KelvinsPerWatt);
