namespace Proveout.Publish.Drawings;

/// <summary>A place where the plate was probed.</summary>
/// <param name="Spot">Where.</param>
/// <param name="Words">What to write beside it; empty for most.</param>
public sealed record PlateMark(PlateSpot Spot, string Words);
