using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Whether records are as they were written.</summary>
internal sealed record VerificationShape(string Format, IReadOnlyList<BuildVerdictShape> Builds, IReadOnlyList<string> File);

/// <summary>Whether one is.</summary>
internal sealed record BuildVerdictShape(
    string Build, string Serial, string Machine, bool Whole, string Sentence, long? BrokenAt, string? Tampering, IReadOnlyList<SealVerdictShape> Seals,
    IReadOnlyList<ClockJumpShape> ClockJumps)
{
    public static BuildVerdictShape Of(BuildVerdict verdict) => new(
        verdict.Build.Id.ToString(),
        verdict.Build.Serial,
        verdict.Build.MachineName,
        verdict.IsWhole,
        verdict.Sentence,
        (verdict.Chain as ChainBroken)?.Sequence,
        verdict.Chain is ChainBroken broken ? WordOf(broken.How) : null,
        [.. verdict.Seals.Select(seal => new SealVerdictShape(seal.Seal.Person, seal.Seal.Entries, WordOf(seal.Standing), seal.Sentence))],
        [.. verdict.ClockJumps.Select(jump => new ClockJumpShape(jump.Sequence, jump.Claimed, jump.Before))]);

    private static string WordOf(Tampering how) => how switch
    {
        Proveout.Journal.Tampering.Altered => "altered",
        Proveout.Journal.Tampering.Removed => "removed",
        Proveout.Journal.Tampering.Inserted => "inserted",
        Proveout.Journal.Tampering.Reordered => "reordered",
        _ => "cut-off",
    };

    private static string WordOf(SealStanding standing) => standing switch
    {
        SealStanding.Holds => "holds",
        SealStanding.Forged => "forged",
        SealStanding.OtherKey => "other-key",
        SealStanding.OtherBuild => "other-build",
        SealStanding.CutOff => "cut-off",
        _ => "rewritten",
    };
}

/// <summary>What a seal says.</summary>
internal sealed record SealVerdictShape(string Person, int Entries, string Standing, string Sentence);

/// <summary>Where the clock was set back.</summary>
internal sealed record ClockJumpShape(int Entry, DateTimeOffset Claimed, DateTimeOffset Before);
