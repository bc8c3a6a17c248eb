namespace Proveout.Engine.Motion;

/// <summary>How the machine was made to vibrate.</summary>
public enum Excitation
{
    /// <summary>Not told: what both of the others would give counts, and their difference is part of the uncertainty.</summary>
    NotTold,

    /// <summary>By forces at the moving part: blows, or noise.</summary>
    Force,

    /// <summary>By the axis itself: the drive moves its end of the spring, with the same acceleration at every frequency.</summary>
    Drive,
}
