namespace Proveout.Engine.Electrical;

/// <summary>Heat that one thing gives off, by one cause.</summary>
/// <param name="Part">Designation of the part; empty for all conductors together.</param>
/// <param name="Kind">The cause.</param>
/// <param name="RestLowWatts">Least at rest: motors stand, heaters hold.</param>
/// <param name="RestHighWatts">Most at rest.</param>
/// <param name="WorkWatts">Most with everything at work.</param>
/// <param name="Words">How it was reckoned, in words.</param>
public sealed record LossLine(string Part, LossKind Kind, double RestLowWatts, double RestHighWatts, double WorkWatts, string Words);
