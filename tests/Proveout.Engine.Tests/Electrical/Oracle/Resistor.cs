namespace Proveout.Engine.Tests.Electrical;

/// <summary>A resistor between two nodes.</summary>
internal readonly record struct Resistor(int A, int B, double Ohms);
