namespace Proveout.Engine.Faults;

/// <summary>A check that a plan may hold, standing for all checks that catch the same for the same cost in the same set-up.</summary>
/// <param name="Check">Index of the check in the dictionary, the lowest of its kind.</param>
/// <param name="SetUp">Index of its set-up.</param>
/// <param name="Units">Its cost in thousandths of a second, whole so that costs add up exactly.</param>
internal sealed record CoverColumn(int Check, int SetUp, long Units);
