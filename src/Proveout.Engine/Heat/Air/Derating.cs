namespace Proveout.Engine.Heat;

/// <summary>How a supply gives less with warmth.</summary>
/// <param name="SharePerKelvin">Share of its current that it loses with each kelvin above its limit, above zero.</param>
/// <param name="AskedShare">Share of its current that is asked of it with everything at work.</param>
public sealed record Derating(double SharePerKelvin, double AskedShare);
