namespace Proveout.Engine.Faults;

/// <summary>What faults made together show at every candidate check.</summary>
/// <param name="CatchingChecks">The checks that surely catch them, rising.</param>
/// <param name="IsSameCircuit">True when every check shows what it shows of the sound machine: they leave an equal circuit.</param>
public sealed record TogetherShows(IReadOnlyList<int> CatchingChecks, bool IsSameCircuit);
