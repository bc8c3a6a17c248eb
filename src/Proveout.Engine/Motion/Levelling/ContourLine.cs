namespace Proveout.Engine.Motion;

/// <summary>A line of equal height.</summary>
/// <param name="Spots">Its corners, in mm of the plate; a closed one ends where it begins.</param>
/// <param name="IsClosed">True when it runs back into itself, false when it ends at the rim of what was probed.</param>
public sealed record ContourLine(IReadOnlyList<(double X, double Y)> Spots, bool IsClosed);
