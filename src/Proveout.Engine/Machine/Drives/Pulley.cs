using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A pulley or idler.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Teeth">Number of teeth; 0 for a smooth idler.</param>
/// <param name="Pitch">Pitch of its teeth; null for a smooth idler.</param>
/// <param name="Diameter">Outer diameter of a smooth idler; null for toothed ones.</param>
/// <param name="Plane">Name of the flat that it lies in.</param>
/// <param name="Across">Its centre, to the right.</param>
/// <param name="Up">Its centre, upward in the drawing of the plane.</param>
/// <param name="Height">Height of the middle of its face above the plane's ground.</param>
/// <param name="Flanged">True when rims keep the belt on it.</param>
public sealed record Pulley(
    string Name, PulleyKind Kind, int Teeth, Length? Pitch, Length? Diameter, string Plane, Riding Across, Riding Up, Length Height, bool Flanged)
{
    /// <summary>The shaft that it turns with, shared with others; its own when empty.</summary>
    public string Shaft { get; init; } = "";

    /// <summary>The motor that turns it; null when none does.</summary>
    public Turning? Driven { get; init; }

    /// <summary>The shaft that it turns with.</summary>
    public string ShaftName => Shaft.Length > 0 ? Shaft : Name;

    /// <summary>True when it has teeth.</summary>
    public bool HasTeeth => Kind is not PulleyKind.Smooth;
}
