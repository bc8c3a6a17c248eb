using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Three mistakes that a plan does not surely catch when they are made together.</summary>
/// <param name="Mistakes">A sentence for each of them.</param>
/// <param name="OtherEvidence">What shows them instead, a sentence each.</param>
public sealed record MaskedThree(IReadOnlyList<string> Mistakes, IReadOnlyList<string> OtherEvidence)
{
    internal static MaskedThree Of(IEnumerable<Fault> faults) =>
        new([.. faults.Select(fault => fault.Sentence)], [.. faults.Select(fault => fault.OtherEvidence).Distinct()]);
}
