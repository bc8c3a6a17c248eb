using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>All builds of a machine, side by side.</summary>
internal sealed record MachineBuildsShape(
    string Format,
    string Machine,
    int Count,
    int Complete,
    int Signed,
    int OtherRevisions,
    IReadOnlyList<BuildRowShape> Builds,
    IReadOnlyList<SpreadShape> Checks,
    IReadOnlyList<FoundShape> Mistakes,
    IReadOnlyList<string> Learned,
    IReadOnlyList<string> Unreadable)
{
    public static MachineBuildsShape Of(MachineBuilds builds, IReadOnlyList<BuildRow> rows, IReadOnlyList<CheckSpread> spreads) => new(
        "proveout-machine-builds 1",
        builds.Machine.Name,
        builds.Count,
        builds.Complete,
        builds.SignedOff,
        builds.OtherRevisions,
        [.. rows.Select(row => new BuildRowShape(
            BuildShape.Of(row.Build), row.Done, row.Planned, row.Failing, row.Apart, row.Mistakes, row.Deviations, row.IsSigned, row.IsOtherRevision, row.LastEntry))],
        [.. spreads.Select(SpreadShape.Of)],
        [.. builds.Mistakes.Select(mistake => new FoundShape(mistake.Kind, mistake.Sentence, mistake.Builds, mistake.Found))],
        builds.Learned,
        builds.Unreadable);
}

/// <summary>One build among its sisters.</summary>
internal sealed record BuildRowShape(
    BuildShape Build, int Done, int Planned, int Failing, int Apart, int Mistakes, int Deviations, bool Signed, bool OtherRevision, DateTimeOffset LastEntry);

/// <summary>How the builds read one check.</summary>
internal sealed record SpreadShape(
    string Check,
    string Title,
    string Unit,
    IntervalShape Expected,
    int Builds,
    int OverRange,
    int Skipped,
    int Failed,
    double? Lowest,
    double? Median,
    double? Highest,
    double? RobustDeviation,
    bool CanTell,
    IReadOnlyList<ApartShape> Apart)
{
    public static SpreadShape Of(CheckSpread spread) => new(
        spread.Check.Id,
        spread.Check.Title,
        spread.Check.Unit,
        IntervalShape.Of(spread.Check.Expectation),
        spread.Builds,
        spread.OverRange,
        spread.Skipped,
        spread.Failed,
        spread.Spread?.Lowest,
        spread.Spread?.Median,
        spread.Spread?.Highest,
        spread.Spread?.Deviation,
        spread.Apart is not null,
        [.. (spread.Apart ?? []).Select(reading => new ApartShape(reading.BuildId, reading.Serial, reading.Shown, reading.Deviations, reading.Sentence))]);
}

/// <summary>A reading that stands out.</summary>
internal sealed record ApartShape(string Build, string Serial, string Shown, double Deviations, string Sentence);

/// <summary>How often a kind of mistake was found.</summary>
internal sealed record FoundShape(string Kind, string MostOften, int Builds, int Found);
