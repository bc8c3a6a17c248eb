using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Faults that no check here can tell.</summary>
/// <param name="Sentence">What they have in common, in a sentence.</param>
/// <param name="OtherEvidence">What would show them instead.</param>
/// <param name="Severity">The worst of them.</param>
/// <param name="Examples">Some of them, a sentence each.</param>
/// <param name="Count">How many there are.</param>
public sealed record UncoveredGroup(string Sentence, string OtherEvidence, Severity Severity, IReadOnlyList<string> Examples, int Count);
