namespace Proveout.Journal;

/// <summary>What can be read of a damaged journal.</summary>
/// <param name="Builds">The builds found, with how much of each.</param>
/// <param name="Lost">What was recorded and cannot be read, one sentence each.</param>
/// <param name="Mended">What had a single flipped bit and was put right, one sentence each.</param>
public sealed record RescueReport(IReadOnlyList<RescuedBuild> Builds, IReadOnlyList<string> Lost, IReadOnlyList<string> Mended);

/// <summary>A build that was found.</summary>
/// <param name="Id">Its identifier.</param>
/// <param name="Serial">Its serial number; empty when that cannot be read.</param>
/// <param name="Entries">How many entries were found and are proven by their hashes.</param>
/// <param name="Recorded">How many were recorded, as far as that can be told.</param>
public sealed record RescuedBuild(string Id, string Serial, int Entries, long Recorded);
