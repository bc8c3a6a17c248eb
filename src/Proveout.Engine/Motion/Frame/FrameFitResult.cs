namespace Proveout.Engine.Motion;

/// <summary>A fitted frame, or why the readings do not give one.</summary>
/// <param name="Fit">The frame.</param>
/// <param name="Problem">What is wrong, and what to measure instead; null when there is a frame.</param>
public sealed record FrameFitResult(FrameFit? Fit, string? Problem);
