using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>What a set of readings says of a build.</summary>
/// <param name="Readings">How many readings there are.</param>
/// <param name="Failed">Those that the sound machine cannot show.</param>
/// <param name="Suspects">Mistakes that explain all of them, most likely first.</param>
/// <param name="Next">The check that would tell most about the suspects; null when there are none or nothing tells them apart.</param>
public sealed record DiagnosisView(int Readings, IReadOnlyList<FailedReading> Failed, IReadOnlyList<Suspect> Suspects, Check? Next)
{
    /// <summary>Probability that none of the mistakes that Proveout knows explains the readings, but another one, 0 to 1.</summary>
    public double Unknown { get; init; }
}
