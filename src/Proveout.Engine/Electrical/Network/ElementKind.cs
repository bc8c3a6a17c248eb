namespace Proveout.Engine.Electrical;

/// <summary>What an element of the wiring network is.</summary>
public enum ElementKind
{
    /// <summary>Between a conductor's end and what it lands on: clamp, crimp, solder.</summary>
    Joint,

    /// <summary>Between a plug's contact and its pin.</summary>
    Mating,

    /// <summary>The copper of a conductor.</summary>
    Copper,

    /// <summary>A fitted jumper.</summary>
    Jumper,

    /// <summary>An element of the circuit inside a part.</summary>
    Inside,
}
