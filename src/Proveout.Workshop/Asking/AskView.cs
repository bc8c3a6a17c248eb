using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>What can be asked of a machine by its symptoms, and what the answers so far say.</summary>
/// <param name="Machine">The machine.</param>
/// <param name="Groups">Every symptom, state by state.</param>
/// <param name="Suspects">Mistakes that explain what was reported, most likely first; empty while nothing is.</param>
/// <param name="Unknown">Probability that none of the mistakes that Proveout knows explains it, 0 to 1.</param>
/// <param name="Next">The check that would tell most, a dead one where any helps; null when there is none.</param>
/// <param name="NextSetUp">The state in which it is done; null with it.</param>
public sealed record AskView(
    MachineSummary Machine, IReadOnlyList<SymptomGroup> Groups, IReadOnlyList<Suspect> Suspects, double Unknown, Check? Next, SetUp? NextSetUp)
{
    /// <summary>True when something was reported as not as it should be.</summary>
    public bool IsAsked => Groups.Any(group => group.Symptoms.Any(symptom => symptom.IsBad == true));
}
