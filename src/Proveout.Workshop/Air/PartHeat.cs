namespace Proveout.Workshop;

/// <summary>Heat that a part gives off.</summary>
/// <param name="Part">Its designation; empty for all conductors together.</param>
/// <param name="RestLeast">Watts at rest, at least.</param>
/// <param name="RestMost">Watts at rest, at most.</param>
/// <param name="WorkMost">Watts with everything at work, at most.</param>
/// <param name="How">How that was reckoned, a sentence each.</param>
public sealed record PartHeat(string Part, double RestLeast, double RestMost, double WorkMost, IReadOnlyList<string> How);
