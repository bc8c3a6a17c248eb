namespace Proveout.Workshop;

/// <summary>What comes into a bay and goes out over the pressure in it: where both meet, it settles.</summary>
/// <param name="FansBlowOut">True when its fans draw out, false when they blow in, null when it has none or both.</param>
/// <param name="Points">Pressure above the room's in Pa, and flows in m³/h.</param>
public sealed record BayCurves(bool? FansBlowOut, IReadOnlyList<BayCurvePoint> Points);
