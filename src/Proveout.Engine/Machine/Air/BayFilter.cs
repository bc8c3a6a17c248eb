using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A filter in an opening, by its data sheet.</summary>
/// <param name="Flow">The flow at which its pressures are given.</param>
/// <param name="Clean">Pressure that it takes when new.</param>
/// <param name="Loaded">Pressure at which it is to be changed.</param>
public sealed record BayFilter(VolumeFlow Flow, Pressure Clean, Pressure Loaded);
