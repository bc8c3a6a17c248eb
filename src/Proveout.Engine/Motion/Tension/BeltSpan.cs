namespace Proveout.Engine.Motion;

/// <summary>A free span of a belt between two pulleys, as a string.</summary>
/// <param name="LengthMetres">Free length, from tangent point to tangent point, in m.</param>
/// <param name="Mass">Mass per length.</param>
/// <param name="Stiffness">How stiff it is.</param>
public sealed record BeltSpan(Uncertain LengthMetres, BeltMass Mass, Stiffness Stiffness)
{
    /// <summary>A span whose stiffness is not known.</summary>
    public BeltSpan(Uncertain lengthMetres, BeltMass mass)
        : this(lengthMetres, mass, new Stiffness.Unknown())
    {
    }
}
