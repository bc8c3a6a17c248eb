namespace Proveout.Engine.Numerics;

/// <summary>One change of a network of resistors.</summary>
/// <param name="Edge">Index of the resistor that changes; -1 when one is added.</param>
/// <param name="A">Its first node.</param>
/// <param name="B">Its second node.</param>
/// <param name="DeltaConductance">Change of its conductance in siemens, not zero; minus its whole conductance when it is taken away.
/// In double-double, for what it leaves of the conductance may be a billionth of it.</param>
/// <param name="TakesAway">True when the resistor is taken away altogether.</param>
internal readonly record struct EdgeChange(int Edge, int A, int B, DoubleDouble DeltaConductance, bool TakesAway)
{
    /// <summary>A resistor added between two nodes.</summary>
    public static EdgeChange Add(int a, int b, double conductance) => new(-1, a, b, conductance, false);

    /// <summary>A resistor taken away.</summary>
    public static EdgeChange TakeAway(int index, Edge edge) => new(index, edge.A, edge.B, -edge.Conductance, true);

    /// <summary>A resistor given another conductance, above zero.</summary>
    public static EdgeChange Set(int index, Edge edge, double conductance) => new(index, edge.A, edge.B, (DoubleDouble)conductance - edge.Conductance, false);
}
