namespace Proveout.Engine.Numerics;

/// <summary>One rank of a change: a conductance added between two nodes.</summary>
/// <param name="A">First node.</param>
/// <param name="B">Second node.</param>
/// <param name="DeltaConductance">Conductance in siemens, of either sign, not zero.</param>
internal readonly record struct NetworkUpdate(int A, int B, DoubleDouble DeltaConductance);
