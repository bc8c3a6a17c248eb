using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A screw that moves an axis.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Moves">The axis.</param>
/// <param name="Lead">Travel for one turn.</param>
/// <param name="Driven">The motor that turns it; positive turns raise the axis unless it is reversed.</param>
public sealed record Screw(string Name, string Moves, Length Lead, Turning Driven);
