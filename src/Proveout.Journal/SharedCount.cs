namespace Proveout.Journal;

/// <summary>A count that servers share.</summary>
/// <param name="Level">How much.</param>
/// <param name="At">When it was last changed, in universal time, to the microsecond.</param>
public readonly record struct SharedCount(double Level, DateTimeOffset At);
