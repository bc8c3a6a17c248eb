namespace Proveout.Engine.Motion;

/// <summary>A fitted frame in space, or why the readings do not give one.</summary>
/// <param name="Fit">The frame.</param>
/// <param name="Problem">What is wrong, and what to measure instead; null when there is a frame.</param>
public sealed record SpaceFitResult(SpaceFit? Fit, string? Problem);
