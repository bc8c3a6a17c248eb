namespace Proveout.Engine.Electrical;

/// <summary>A protective device that interrupts.</summary>
/// <param name="Subject">Designation of the part; <c>outlet</c> for what stands before the machine.</param>
/// <param name="Name">Its name on the part.</param>
/// <param name="Amperes">Current through it, or residual current, when it interrupts.</param>
/// <param name="RatedAmperes">Its rated current, or rated residual current.</param>
/// <param name="Seconds">Longest time that it may take.</param>
/// <param name="IsResidual">True when a residual-current device interrupts.</param>
public sealed record Trip(string Subject, string Name, double Amperes, double RatedAmperes, double Seconds, bool IsResidual);
