using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A point of a fan's curve.</summary>
/// <param name="Flow">Flow.</param>
/// <param name="Pressure">Pressure that it makes at that flow.</param>
public sealed record FanPoint(VolumeFlow Flow, Pressure Pressure);
