namespace Proveout.Engine.Faults;

/// <summary>Which of two faults the plan surely catches alone.</summary>
public enum PairKind
{
    /// <summary>Both: made together they hide each other.</summary>
    BothCaught,

    /// <summary>One: the other hides it.</summary>
    OneCaught,

    /// <summary>Neither.</summary>
    NoneCaught,
}
