namespace Proveout.Engine.Faults;

/// <summary>A check that would rule a suspect out, were its rivals true.</summary>
/// <param name="Check">Index of the check.</param>
/// <param name="Shown">What the check may show when the suspect is true: anything else rules it out.</param>
/// <param name="Otherwise">What it may show when the likeliest rival is true that surely differs.</param>
/// <param name="Share">How probable the rivals are that surely differ, 0 to 1.</param>
public sealed record RulingCheck(int Check, ReadingInterval Shown, ReadingInterval Otherwise, double Share);
