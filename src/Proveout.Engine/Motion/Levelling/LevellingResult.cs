namespace Proveout.Engine.Motion;

/// <summary>Advice, or why there can be none.</summary>
/// <param name="Advice">How to level.</param>
/// <param name="Problem">What is wrong, and what to do; null when there is advice.</param>
public sealed record LevellingResult(LevellingAdvice? Advice, string? Problem);
