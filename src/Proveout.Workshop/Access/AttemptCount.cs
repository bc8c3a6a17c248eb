namespace Proveout.Workshop;

/// <summary>A count of tries.</summary>
/// <param name="Level">How many.</param>
/// <param name="At">When it was last changed, in universal time.</param>
public readonly record struct AttemptCount(double Level, DateTimeOffset At);
