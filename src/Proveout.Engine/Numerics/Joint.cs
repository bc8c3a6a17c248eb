namespace Proveout.Engine.Numerics;

/// <summary>A resistor that joins two sections of a changed network which nothing else joins.</summary>
/// <param name="A">Its node in the one section.</param>
/// <param name="B">Its node in the other.</param>
/// <param name="SectionOfA">The one section.</param>
/// <param name="SectionOfB">The other.</param>
/// <param name="Ohms">Its resistance, above zero.</param>
/// <param name="Edge">Index of the resistor that stood there before with another resistance; -1 when it was added.</param>
internal readonly record struct Joint(int A, int B, int SectionOfA, int SectionOfB, DoubleDouble Ohms, int Edge);
