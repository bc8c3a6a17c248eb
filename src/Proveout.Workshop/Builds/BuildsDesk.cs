using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Many builds over one digest of the journal.</summary>
/// <param name="shelf">The machines.</param>
/// <param name="desk">Plans them.</param>
/// <param name="journal">Keeps the builds.</param>
/// <param name="records">The same builds in digest.</param>
public sealed class BuildsDesk(MachineShelf shelf, PlanDesk desk, IJournal journal, WorkshopRecords records) : IBuildsDesk
{
    private const int BuildsOnAPage = 30;

    private readonly WorkshopExperience _experience = new(shelf, desk, records, TimeProvider.System);
    private volatile IReadOnlyList<Build> _newestFirst = [];

    /// <inheritdoc/>
    public async Task<Paged<BuildSummary>> FindAsync(BuildsQuery query, CancellationToken cancellation)
    {
        // Builds are never changed or removed: as many as before are the same ones.
        if ((await journal.SizeAsync(cancellation)).Builds != _newestFirst.Count)
            _newestFirst = [.. (await journal.ListBuildsAsync(cancellation)).Reverse()];
        return Paged<Build>.Of([.. BuildSearch.Matching(_newestFirst, query.Text)], query.Page, BuildsOnAPage).Select(Summarise);
    }

    /// <inheritdoc/>
    public Task PrepareAsync(CancellationToken cancellation) => records.LookAsync(digest => digest.Version, cancellation);

    /// <inheritdoc/>
    public async Task<MachineBuilds?> OfMachineAsync(string machineId, BuildsQuery query, CancellationToken cancellation)
    {
        if (shelf.Find(machineId) is not { } machine)
            return null;
        var planned = desk.Of(machine);
        var learned = LearnedWords.Of(await _experience.OfAllAsync(cancellation));
        return await records.LookAsync(
            digest => new MachineSurvey(planned, digest.OfMachine(machine.Design.Name), build => Summarise(build.Build)).Of(query, [.. digest.Damage.Values]) with { Learned = learned },
            cancellation);
    }

    /// <inheritdoc/>
    public async Task<IReadOnlyList<DeviationHint>> HintsAsync(string buildId, string checkId, CancellationToken cancellation)
    {
        if (!Guid.TryParse(buildId, out var id)
            || await journal.FindBuildAsync(id, cancellation) is not { } build
            || shelf.OfBuild(build.MachineFingerprint, build.MachineName) is not { } machine
            || desk.Of(machine).FindCheck(checkId) is not { } check)
            return [];
        return await records.LookAsync(
            digest => digest.Find(id) is { } own ? DeviationHints.Of(digest.OfMachine(build.MachineName), own, machine.Design, check) : [], cancellation);
    }

    /// <inheritdoc/>
    public async Task<Outcome<BuildSummary>> AnswerAsync(string buildId, DeviationAnswer answer, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (!Guid.TryParse(buildId, out var id) || await journal.FindBuildAsync(id, cancellation) is not { } build)
            return Outcome.Refused<BuildSummary>([Refusals.NoSuchBuild(buildId)]);
        if (answer.Person.Trim().Length == 0)
            return Outcome.Refused<BuildSummary>([Refusals.Empty("The name", "Say who you are.")]);
        var isThere = Guid.TryParse(answer.NotedIn, out var notedIn) && await records.LookAsync(
            digest => digest.Find(notedIn)?.Deviations.Any(note => note.Sequence == answer.NotedAt) == true, cancellation);
        if (!isThere)
            return Outcome.Refused<BuildSummary>([Refusals.NoSuchDeviation()]);
        try
        {
            await journal.AppendAsync(
                id, new EntryDraft(answer.Key, answer.Person.Trim(), "", new DeviationAnswered(notedIn, answer.NotedAt, answer.Holds, answer.Note.Trim())), cancellation);
            return Outcome.Of(Summarise(build));
        }
        catch (JournalException refusal)
        {
            return Outcome.Refused<BuildSummary>([Refusals.Journal(refusal.Message)]);
        }
    }

    private BuildSummary Summarise(Build build) => new(
        build.Id.ToString(),
        build.Serial,
        shelf.OfBuild(build.MachineFingerprint, build.MachineName)?.Id ?? "",
        build.MachineName,
        build.Builder,
        build.Started);
}
