using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A place that an end of a belt is clamped at.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Plane">Name of the flat that it lies in.</param>
/// <param name="Across">Its place, to the right.</param>
/// <param name="Up">Its place, upward in the drawing of the plane.</param>
/// <param name="Height">Height of the belt's middle there.</param>
public sealed record BeltAnchor(string Name, string Plane, Riding Across, Riding Up, Length Height);
