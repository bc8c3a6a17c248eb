using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>A mistake that could do harm at a stage.</summary>
/// <param name="FaultId">Identifier of the mistake.</param>
/// <param name="Sentence">The mistake.</param>
/// <param name="Severity">How bad it is at this stage.</param>
/// <param name="Consequence">What it does there, with figures.</param>
/// <param name="OtherEvidence">What shows it beforehand, when no reading does.</param>
public sealed record StageRisk(string FaultId, string Sentence, Severity Severity, string Consequence, string OtherEvidence);
