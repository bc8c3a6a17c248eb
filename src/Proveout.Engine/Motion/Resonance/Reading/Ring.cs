namespace Proveout.Engine.Motion;

/// <summary>What one direction did after a blow.</summary>
/// <param name="StartSample">Number of the sample at which the blow came.</param>
/// <param name="Before">Samples before it.</param>
/// <param name="After">Samples from it on.</param>
public sealed record Ring(long StartSample, IReadOnlyList<double> Before, IReadOnlyList<double> After);
