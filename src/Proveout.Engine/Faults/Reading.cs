namespace Proveout.Engine.Faults;

/// <summary>What was seen at a check.</summary>
/// <param name="CheckId">The check.</param>
/// <param name="Value">Value in the check's unit; <see cref="ReadingInterval.OverRange"/> for over range.</param>
public sealed record Reading(string CheckId, double Value);
