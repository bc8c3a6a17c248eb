namespace Proveout.Journal;

/// <summary>Holds seals against a record.</summary>
internal static class SealCheck
{
    /// <param name="seals">Those to check.</param>
    /// <param name="build">The build.</param>
    /// <param name="hashes">Recomputed: of the build's own record, then of each entry.</param>
    /// <param name="publicKey">The key that is trusted; null to accept each seal's own.</param>
    public static IReadOnlyList<SealVerdict> Run(IReadOnlyList<Seal> seals, Guid build, IReadOnlyList<string> hashes, string? publicKey)
    {
        var verdicts = new List<SealVerdict>();
        foreach (var seal in seals.Distinct())
        {
            var standing = StandingOf(seal, build, hashes, publicKey ?? seal.PublicKey);
            verdicts.Add(new SealVerdict(seal, standing, Sentence(seal, standing, hashes.Count - 1)));
        }
        return [.. verdicts.Select(verdict => verdict.Standing == SealStanding.Rewritten ? Narrowed(verdict, verdicts) : verdict)];
    }

    public static SealStanding StandingOf(Seal seal, Guid build, IReadOnlyList<string> hashes, string publicKey)
    {
        if (seal.BuildId != build)
            return SealStanding.OtherBuild;
        if (seal.PublicKey != publicKey)
            return SealStanding.OtherKey;
        if (!SealKey.Signed(seal))
            return SealStanding.Forged;
        if (seal.Entries >= hashes.Count)
            return SealStanding.CutOff;
        return seal.Entries >= 0 && hashes[seal.Entries] == seal.Hash ? SealStanding.Holds : SealStanding.Rewritten;
    }

    public static string Sentence(Seal seal, SealStanding standing, int entries)
    {
        var which = FormattableString.Invariant($"The seal of {seal.Person} over {seal.Entries} entries ({seal.Sealed.UtcDateTime:yyyy-MM-dd HH:mm} UTC)");
        return standing switch
        {
            SealStanding.Holds => $"{which} holds: up to there the record is as it was sealed.",
            SealStanding.Forged => $"{which} was itself altered: its signature does not belong to it.",
            SealStanding.OtherKey => $"{which} was signed with another key than the one you trust.",
            SealStanding.OtherBuild => $"{which} is of another build ({seal.BuildId}).",
            SealStanding.CutOff => $"{which} shows that the record was cut off: only {entries} entries are there.",
            _ => $"{which} shows that the record was written anew: entry {seal.Entries} or one before it is not what was sealed.",
        };
    }

    // An earlier seal that still holds narrows the place down.
    private static SealVerdict Narrowed(SealVerdict verdict, IReadOnlyList<SealVerdict> all)
    {
        var held = all.Where(other => other.Standing == SealStanding.Holds && other.Seal.Entries < verdict.Seal.Entries).ToList();
        return held.Count == 0
            ? verdict
            : verdict with { Sentence = FormattableString.Invariant($"{verdict.Sentence} Entries 1 to {held.Max(other => other.Seal.Entries)} are held by an earlier seal.") };
    }
}
