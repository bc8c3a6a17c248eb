namespace Proveout.Publish.Report;

/// <summary>Faults that no check of the report can tell.</summary>
/// <param name="Sentence">What they have in common.</param>
/// <param name="Severity">What the worst of them does, in words.</param>
/// <param name="OtherEvidence">What else would show them.</param>
/// <param name="Count">How many there are.</param>
public sealed record ReportGap(string Sentence, string Severity, string OtherEvidence, int Count);
