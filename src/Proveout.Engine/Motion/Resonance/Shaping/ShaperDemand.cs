namespace Proveout.Engine.Motion;

/// <summary>What is asked of shapers.</summary>
/// <param name="Tolerance">Share of vibration that may be left.</param>
/// <param name="CornerError">Distance from a corner at which the path may pass it, in m.</param>
/// <param name="CornerSpeed">Speed that each axis keeps at a corner, in m/s.</param>
/// <param name="LowestHertz">Where the measured spectrum counts from.</param>
/// <param name="HighestHertz">Up to where it counts.</param>
/// <param name="Wander">Share by which a resonance may wander over the travel and with the load, beside its uncertainty.</param>
public sealed record ShaperDemand(double Tolerance, double CornerError, double CornerSpeed, double LowestHertz, double HighestHertz, double Wander);
