namespace Proveout.Journal;

/// <summary>What was recorded of one build beyond what the reader knew.</summary>
/// <param name="BuildId">The build.</param>
/// <param name="Build">Its own record; null when that cannot be read.</param>
/// <param name="Entries">The further entries, in order; empty when one of them cannot be read.</param>
/// <param name="Recorded">How many entries the build has now: what the reader knows of it from here on.</param>
/// <param name="Damage">Why it cannot be read, in a sentence; empty when it can.</param>
public sealed record BuildNews(Guid BuildId, Build? Build, IReadOnlyList<Entry> Entries, int Recorded, string Damage);
