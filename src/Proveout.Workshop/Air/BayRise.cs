namespace Proveout.Workshop;

/// <summary>By how much the air that leaves a bay is warmer than the room's, in K; null where nothing is counted on that would carry the heat away.</summary>
/// <param name="RestLeast">At rest, with new filters, at least.</param>
/// <param name="RestMost">The same at most.</param>
/// <param name="WorkMost">At most, with everything at work and filters that are to be changed.</param>
/// <param name="StillMost">The same with every fan standing.</param>
public sealed record BayRise(double RestLeast, double? RestMost, double? WorkMost, double? StillMost);
