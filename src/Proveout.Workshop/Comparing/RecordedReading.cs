namespace Proveout.Workshop;

/// <summary>A reading of a build's record and what a change of the machine makes of it.</summary>
/// <param name="Step">The step with its reading, judged by the machine that the build was started from.</param>
/// <param name="Compared">What becomes of it.</param>
public sealed record RecordedReading(BenchStep Step, ComparedCheck Compared);
