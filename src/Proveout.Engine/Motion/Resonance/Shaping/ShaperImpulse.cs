namespace Proveout.Engine.Motion;

/// <summary>One impulse of a shaper.</summary>
/// <param name="Share">Its share of the command; all together are 1.</param>
/// <param name="Seconds">When, after the first.</param>
public readonly record struct ShaperImpulse(double Share, double Seconds);
