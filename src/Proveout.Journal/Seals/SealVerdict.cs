namespace Proveout.Journal;

/// <summary>What one seal says about the record as it is now.</summary>
/// <param name="Seal">The seal.</param>
/// <param name="Standing">What it says.</param>
/// <param name="Sentence">The same in a sentence.</param>
public sealed record SealVerdict(Seal Seal, SealStanding Standing, string Sentence);
