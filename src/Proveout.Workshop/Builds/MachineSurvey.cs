using Proveout.Engine.Faults;

namespace Proveout.Workshop;

/// <summary>Puts the builds of a machine side by side.</summary>
/// <param name="planned">The machine as it is now.</param>
/// <param name="digest">Its builds.</param>
/// <param name="summary">Makes the summary of a build.</param>
internal sealed class MachineSurvey(PlannedMachine planned, MachineDigest digest, Func<BuildDigest, BuildSummary> summary)
{
    private const int BuildsOnAPage = 50;
    private const int ChecksOnAPage = 15;
    private const int MostApart = 30;
    private const int MostMistakes = 10;

    private readonly CheckSpread[] _spreads =
    [
        .. digest.Checks
            .Where(check => planned.Dictionary.IndexOfCheck(check) is not null)
            .Select(check => digest.SpreadOf(planned, check))
            .OrderByDescending(spread => spread.Apart?.Count ?? 0)
            .ThenByDescending(spread => spread.Failed)
            .ThenByDescending(spread => spread.Builds)
            .ThenBy(spread => spread.Check.Id, StringComparer.Ordinal),
    ];

    /// <summary>What was asked for.</summary>
    public MachineBuilds Of(BuildsQuery query, IReadOnlyList<string> unreadable)
    {
        ReadingApart[] apart = [.. _spreads.SelectMany(spread => spread.Apart ?? []).OrderByDescending(reading => Math.Abs(reading.Deviations))];
        var apartOf = apart.CountBy(reading => reading.BuildId).ToDictionary(StringComparer.Ordinal);
        var chosen = _spreads.FirstOrDefault(spread => spread.Check.Id == query.CheckId);
        return new MachineBuilds(
            planned.Machine.Summary,
            digest.Builds.Count,
            digest.Builds.Count(build => build.Plan.Count > 0 && build.Done == build.Plan.Count),
            digest.Builds.Count(build => build.IsSigned),
            digest.Builds.Count(IsOtherRevision),
            query.Text.Trim(),
            Paged<BuildDigest>.Of(Matching(digest.NewestFirst, query.Text), query.Page, BuildsOnAPage)
                .Select(build => Row(build, apartOf.GetValueOrDefault(build.Build.Id.ToString()))),
            Paged<CheckSpread>.Of(_spreads, query.ChecksPage, ChecksOnAPage),
            [.. apart.Take(MostApart)],
            apart.Length,
            Mistakes(),
            [],
            unreadable,
            chosen,
            chosen is null ? null : SpreadPlot.Of(chosen, digest.ReadersOf(chosen.Check.Id).Select(reader => reader.Word.Value)));
    }

    /// <summary>The builds whose serial number, builder or machine holds a text.</summary>
    public static IReadOnlyList<BuildDigest> Matching(IReadOnlyList<BuildDigest> builds, string text)
    {
        var wanted = text.Trim();
        return wanted.Length == 0 ? builds : [.. builds.Where(build => BuildSearch.Holds(build.Build, wanted))];
    }

    private BuildRow Row(BuildDigest build, int apart) => new(
        summary(build),
        build.Done,
        build.Plan.Count,
        build.Words.Count(word => !word.Value.IsSkipped && planned.Dictionary.IndexOfCheck(word.Key) is { } check
            && planned.Dictionary.Checks[check].Judge(word.Value.Value) == Verdict.Fail),
        build.Mistakes.Count,
        build.Deviations.Count,
        apart,
        build.IsSigned,
        IsOtherRevision(build),
        build.LastEntry);

    private bool IsOtherRevision(BuildDigest build) => build.Build.MachineFingerprint != planned.Machine.Fingerprint;

    private IReadOnlyList<MistakeCount> Mistakes() =>
    [
        .. digest.Builds
            .SelectMany(build => build.Mistakes.Select(mistake => (Build: build, Mistake: mistake)))
            .GroupBy(found => found.Mistake.FaultKind, StringComparer.Ordinal)
            .Select(kind => new MistakeCount(
                kind.Key,
                SentenceOf(kind.CountBy(found => found.Mistake.FaultId).MaxBy(fault => fault.Value).Key),
                kind.Select(found => found.Build).Distinct().Count(),
                kind.Count()))
            .OrderByDescending(kind => kind.Builds)
            .ThenBy(kind => kind.Kind, StringComparer.Ordinal)
            .Take(MostMistakes),
    ];

    // A mistake of another revision may not be among those of this one.
    private string SentenceOf(string fault) => planned.Dictionary.Faults.FirstOrDefault(known => known.Id == fault)?.Sentence ?? fault;
}
