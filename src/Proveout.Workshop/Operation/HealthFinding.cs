namespace Proveout.Workshop;

/// <summary>One thing that the bench cannot work without.</summary>
/// <param name="Name">What was looked at: `journal-read`, `journal-write` or `disk-space`.</param>
/// <param name="IsGood">True when the bench can work.</param>
/// <param name="Sentence">What was found.</param>
/// <param name="Mend">What to do; empty when it is good.</param>
public sealed record HealthFinding(string Name, bool IsGood, string Sentence, string Mend);
