using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Pairs of mistakes of like kinds that hide each other.</summary>
/// <param name="Kinds">The two kinds, in plain words.</param>
/// <param name="Reading">What readings say of such a pair, in a sentence.</param>
/// <param name="Severity">What both together do when first energised.</param>
/// <param name="Consequence">The same in a sentence, of the example.</param>
/// <param name="AloneSeverity">The worse of what the two do alone: mending the one leaves the other.</param>
/// <param name="Example">One of the pairs: both mistakes in a sentence each.</param>
/// <param name="OtherEvidence">What shows them instead, a sentence each.</param>
/// <param name="Count">How many there are.</param>
public sealed record PairGroup(string Kinds, string Reading, Severity Severity, string Consequence, Severity AloneSeverity, string Example, IReadOnlyList<string> OtherEvidence, int Count);
