namespace Proveout.Engine.Numerics;

/// <summary>An edge of a network of resistors.</summary>
/// <param name="A">First node.</param>
/// <param name="B">Second node, another one.</param>
/// <param name="Conductance">Conductance in siemens; above zero in a network, of either sign in a change of one.</param>
internal readonly record struct Edge(int A, int B, double Conductance);
