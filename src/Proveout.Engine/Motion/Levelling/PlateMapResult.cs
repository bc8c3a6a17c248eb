namespace Proveout.Engine.Motion;

/// <summary>A map, or why the points do not make one.</summary>
/// <param name="Map">The map.</param>
/// <param name="Problem">What is wrong with the points and what to measure instead; null when there is a map.</param>
public sealed record PlateMapResult(PlateMap? Map, string? Problem);
