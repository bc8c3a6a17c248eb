using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A backup that was made.</summary>
internal sealed record BackupShape(string Format, string File, IReadOnlyList<BuildVerdictShape> Builds);

/// <summary>A backup that was restored.</summary>
internal sealed record RestoreShape(string Format, string Journal, IReadOnlyList<BuildShape> Builds);

/// <summary>What can be read of a damaged journal.</summary>
internal sealed record RescueShape(string Format, string? File, IReadOnlyList<RescuedShape> Builds, IReadOnlyList<string> Lost, IReadOnlyList<string> Mended)
{
    public static RescueShape Of(RescueReport report, string? file) => new(
        "proveout-rescue 1",
        file,
        [.. report.Builds.Select(build => new RescuedShape(build.Id, build.Serial, build.Entries, build.Recorded))],
        report.Lost,
        report.Mended);
}

/// <summary>A build of it.</summary>
internal sealed record RescuedShape(string Build, string Serial, int Entries, long Recorded);

/// <summary>A build that went into an archive or came out of one.</summary>
internal sealed record TransferShape(string Format, string File, BuildShape Build, int Entries, int Added, string LastHash);

/// <summary>A key that was made.</summary>
internal sealed record KeyShape(string Format, string File, string PublicFile, string PublicKey);

/// <summary>A seal that was put to a record.</summary>
internal sealed record SealingShape(string Format, string Build, int Entries, string Hash, DateTimeOffset Sealed, string Person, string? File);

/// <summary>A journal that was copied into another.</summary>
internal sealed record JournalCopyShape(string Format, string From, string To, IReadOnlyList<CopiedBuildShape> Builds);

/// <summary>A build of it.</summary>
internal sealed record CopiedBuildShape(string Build, string Serial, string Machine, int Entries, int Added, bool Whole, int GrewBy, string LastHash)
{
    public static CopiedBuildShape Of(CopiedBuild copied) => new(
        copied.Build.Id.ToString(), copied.Build.Serial, copied.Build.MachineName, copied.Entries, copied.Added, copied.IsWhole, copied.GrewBy, copied.LastHash);
}
