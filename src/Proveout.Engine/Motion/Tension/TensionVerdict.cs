namespace Proveout.Engine.Motion;

/// <summary>What a force says against a target.</summary>
public enum TensionVerdict
{
    /// <summary>Surely within the band.</summary>
    Right,

    /// <summary>Surely below it.</summary>
    TooLoose,

    /// <summary>Surely above it.</summary>
    TooTight,

    /// <summary>The uncertainty reaches over an end of the band.</summary>
    CannotTell,
}
