namespace Proveout.Workshop;

/// <summary>What flows at a pressure in a bay, in m³/h.</summary>
/// <param name="Pascals">Pressure above the room's.</param>
/// <param name="InLeast">What comes in at least.</param>
/// <param name="InMost">What comes in at most.</param>
/// <param name="OutLeast">What goes out at least.</param>
/// <param name="OutMost">What goes out at most.</param>
public sealed record BayCurvePoint(double Pascals, double InLeast, double InMost, double OutLeast, double OutMost);
