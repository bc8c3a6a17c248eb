using UnitsNet;

namespace Proveout.Engine.Machine;

/// <summary>A direction that something moves in by itself, counted in millimetres.</summary>
/// <param name="Name">Its name, which places refer to.</param>
/// <param name="Low">Its lowest coordinate.</param>
/// <param name="High">Its highest coordinate.</param>
public sealed record Axis(string Name, Length Low, Length High);
