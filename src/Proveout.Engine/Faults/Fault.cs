using Proveout.Engine.Machine;

namespace Proveout.Engine.Faults;

/// <summary>One plausible mistake in building the machine (fault as in IEC 60812).</summary>
/// <param name="Id">Identifier, stable as long as the machine is.</param>
/// <param name="Kind">Kind of fault, lower case with hyphens.</param>
/// <param name="Sentence">What is wrong, in a sentence that a builder understands.</param>
/// <param name="Subjects">Designations and identifiers concerned.</param>
/// <param name="Severity">What it does when first energised or moved.</param>
/// <param name="Consequence">The same in a sentence.</param>
/// <param name="Prior">Probability that a careful builder makes this very mistake in one build, 0 to 1.</param>
/// <param name="OtherEvidence">What shows it when no check can: eye, tug, live test.</param>
public sealed record Fault(
    string Id,
    string Kind,
    string Sentence,
    ValueList<string> Subjects,
    Severity Severity,
    string Consequence,
    double Prior,
    string OtherEvidence)
{
    /// <summary>True for another fault of the same kind in the same place: the thing is wrong in one way or in the other, never in both.</summary>
    public bool IsAlternativeTo(Fault other) => other is not null && Kind == other.Kind && Subjects.Equals(other.Subjects);
}
