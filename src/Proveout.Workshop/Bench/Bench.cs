using System.Runtime.CompilerServices;
using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Publish.Drawings;
using Proveout.Publish.Report;

namespace Proveout.Workshop;

/// <summary>The bench over a journal and the machines at hand.</summary>
public sealed class Bench : IBench
{
    private const string DefaultInstrument = "hand-held meter";

    private readonly MachineShelf _shelf;
    private readonly PlanDesk _desk;
    private readonly IJournal _journal;
    private readonly WorkshopExperience _experience;
    private readonly BenchStates _states;

    /// <summary>Sets a bench up.</summary>
    /// <param name="shelf">The machines.</param>
    /// <param name="desk">Plans them.</param>
    /// <param name="journal">Keeps the builds.</param>
    /// <param name="records">The same builds in digest, shared with others who compare builds; a digest of its own when left out.</param>
    /// <param name="clock">Says when to look for what was recorded elsewhere; the system's when left out.</param>
    public Bench(MachineShelf shelf, PlanDesk desk, IJournal journal, WorkshopRecords? records = null, TimeProvider? clock = null)
    {
        (_shelf, _desk, _journal) = (shelf, desk, journal);
        _experience = new(shelf, desk, records ?? new WorkshopRecords(journal), clock ?? TimeProvider.System);
        _states = new(journal, _experience);
    }

    /// <inheritdoc/>
    public IReadOnlyList<MachineSummary> Machines() => [.. _shelf.Machines.Select(machine => machine.Summary)];

    /// <inheritdoc/>
    public async Task<IReadOnlyList<BuildSummary>> BuildsAsync(CancellationToken cancellation) =>
        [.. (await _journal.ListBuildsAsync(cancellation)).Reverse().Select(Summarise)];

    /// <inheritdoc/>
    public async Task<Outcome<BuildSummary>> StartAsync(StartBuild request, CancellationToken cancellation)
    {
        if (_shelf.Find(request.MachineId) is not { } machine)
            return Outcome.Refused<BuildSummary>([Refusals.NoSuchMachine(request.MachineId)]);
        if (string.IsNullOrWhiteSpace(request.Builder))
            return Outcome.Refused<BuildSummary>([Refusals.Empty("The builder's name", "Say who builds it.")]);

        var id = Guid.CreateVersion7();
        var serial = string.IsNullOrWhiteSpace(request.Serial) ? id.ToString("N")[^8..] : request.Serial.Trim();
        try
        {
            var build = await _journal.StartBuildAsync(
                new BuildDraft(id, serial, machine.Design.Name, machine.Fingerprint, request.Builder.Trim()), cancellation);
            await FixPlanAsync(build, machine, request, cancellation);
            return Outcome.Of(Summarise(build));
        }
        catch (JournalException refusal)
        {
            return Outcome.Refused<BuildSummary>([Refusals.Journal(refusal.Message)]);
        }
    }

    /// <inheritdoc/>
    public async Task<BenchState?> StateAsync(string buildId, CancellationToken cancellation) =>
        await FindAsync(buildId, cancellation) is { } found ? await StateOfAsync(found, cancellation) : null;

    /// <inheritdoc/>
    public async Task<BenchStep?> StepAsync(string buildId, string checkId, CancellationToken cancellation)
    {
        if (await FindAsync(buildId, cancellation) is not { } found)
            return null;
        var state = await StateOfAsync(found, cancellation);
        return state.FindStep(checkId) ?? BenchFold.StepBeside(found.Planned, state, checkId);
    }

    /// <inheritdoc/>
    public async Task<Outcome<BenchState>> EnterReadingAsync(string buildId, ReadingRequest request, CancellationToken cancellation)
    {
        if (await FindAsync(buildId, cancellation) is not { } found)
            return Outcome.Refused<BenchState>([Refusals.NoSuchBuild(buildId)]);
        if (found.Planned.FindCheck(request.CheckId) is not { } check)
            return Outcome.Refused<BenchState>([Refusals.NoSuchCheck(request.CheckId)]);
        if (ReadingText.TryRead(request.Text, check.Unit) is not { } value)
            return Outcome.Refused<BenchState>([Refusals.UnreadableReading(request.Text.Trim(), check.Unit)]);

        var isOver = double.IsPositiveInfinity(value);
        var reading = new Journal.Reading(
            check.Id, check.SetUp, request.Text.Trim(), isOver ? null : value, isOver, isOver ? "" : check.Unit, VerdictWords.Of(check.Judge(value)));
        var entries = await _journal.ReadAsync(found.Build.Id, 0, cancellation);
        if (request.SeenOpen && SeenBefore.Refusal(entries, check.Id, request.Person.Trim(), request.Key) is { } unseen)
            return Outcome.Refused<BenchState>([unseen]);
        EntryContent content = SeenBefore.LastReading(entries, check.Id, request.Key) is { } earlier ? new ReadingCorrected(earlier, reading) : new ReadingEntered(reading);
        return await AppendAsync(found, new EntryDraft(request.Key, request.Person.Trim(), InstrumentOf(entries), content), cancellation);
    }

    /// <inheritdoc/>
    public async Task<Outcome<BenchState>> SkipAsync(string buildId, SkipRequest request, CancellationToken cancellation)
    {
        if (string.IsNullOrWhiteSpace(request.Reason))
            return Outcome.Refused<BenchState>([Refusals.Empty("The reason", "Say in a few words why this check is left out.")]);
        if (await FindAsync(buildId, cancellation) is not { } found)
            return Outcome.Refused<BenchState>([Refusals.NoSuchBuild(buildId)]);
        var entries = request.SeenOpen ? await _journal.ReadAsync(found.Build.Id, 0, cancellation) : [];
        return SeenBefore.Refusal(entries, request.CheckId, request.Person.Trim(), request.Key) is { } unseen
            ? Outcome.Refused<BenchState>([unseen])
            : await AppendAsync(found, new EntryDraft(request.Key, request.Person.Trim(), "", new CheckSkipped(request.CheckId, request.Reason.Trim())), cancellation);
    }

    /// <inheritdoc/>
    public Task<Outcome<BenchState>> NoteDeviationAsync(string buildId, DeviationRequest request, CancellationToken cancellation) =>
        string.IsNullOrWhiteSpace(request.Note)
            ? Refuse(Refusals.Empty("The note", "Say what differs from the guide or the machine file."))
            : AppendAsync(
                buildId,
                new EntryDraft(request.Key, request.Person.Trim(), "", new Deviation(request.Subject.Trim(), request.Note.Trim())),
                cancellation);

    /// <inheritdoc/>
    public async Task<Outcome<BenchState>> NoteMistakeAsync(string buildId, MistakeRequest request, CancellationToken cancellation)
    {
        if (await FindAsync(buildId, cancellation) is not { } found)
            return Outcome.Refused<BenchState>([Refusals.NoSuchBuild(buildId)]);
        if (found.Planned.Dictionary.Faults.FirstOrDefault(fault => fault.Id == request.FaultId) is not { } fault)
            return Outcome.Refused<BenchState>([Refusals.NoSuchMistake(request.FaultId)]);
        var content = new MistakeFound(fault.Kind, fault.Id, request.Note.Trim());
        var noted = await AppendAsync(found, new EntryDraft(request.Key, request.Person.Trim(), "", content), cancellation);
        _experience.Forget();
        return noted;
    }

    /// <inheritdoc/>
    public Task<Outcome<BenchState>> AttachPhotoAsync(string buildId, PhotoRequest request, CancellationToken cancellation) =>
        Photograph.MediaType(request.Bytes.Span) is not { } mediaType ? Refuse(Refusals.NoPicture())
        : PlainPhotograph.Of(request.Bytes) is not { } plain ? Refuse(Refusals.BrokenPicture())
        : AppendAsync(
            buildId,
            EntryDraft.OfPhoto(request.Key, request.Person.Trim(), request.Subject.Trim(), Path.GetFileName(request.FileName), mediaType, plain, request.Caption.Trim()),
            cancellation);

    /// <inheritdoc/>
    public async Task<PhotoContent?> PhotoAsync(string buildId, string sha256, CancellationToken cancellation) =>
        Guid.TryParse(buildId, out var id) && await _journal.ReadPhotoAsync(id, sha256, cancellation) is { } photo
            ? new PhotoContent(photo.About.ContentType, photo.Bytes)
            : null;

    /// <inheritdoc/>
    public async Task<Outcome<BenchState>> SignOffAsync(string buildId, SignOffRequest request, CancellationToken cancellation)
    {
        if (string.IsNullOrWhiteSpace(request.Statement))
            return await Refuse(Refusals.Empty("The statement", "Say what you sign."));
        if (await FindAsync(buildId, cancellation) is { } found && SecondPerson.Against(request, await _journal.ReadAsync(found.Build.Id, 0, cancellation)) is { } refusal)
            return await Refuse(refusal);
        var signature = new SignedOff(request.Person.Trim(), request.Role.Trim(), request.Statement.Trim());
        return await AppendAsync(buildId, new EntryDraft(request.Key, request.Person.Trim(), "", signature), cancellation);
    }

    /// <inheritdoc/>
    public async IAsyncEnumerable<long> WatchAsync(string buildId, long afterSequence, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (Guid.TryParse(buildId, out var id))
            await foreach (var entry in _journal.WatchAsync(id, (int)afterSequence, cancellation))
                yield return entry.Sequence;
    }

    /// <inheritdoc/>
    public async Task<string?> ProbeDrawingAsync(string buildId, string checkId, CancellationToken cancellation) =>
        await FindAsync(buildId, cancellation) is { } found && found.Planned.FindCheck(checkId) is { } check
            ? ProbeDrawing.Svg(found.Planned.Machine.Design, check)
            : null;

    /// <inheritdoc/>
    public IReadOnlyList<KindCoverage> Coverage(string machineId, IEnumerable<string> checkIds)
    {
        if (_shelf.Find(machineId) is not { } machine)
            return [];
        var planned = _desk.Of(machine);
        return PlanViews.Coverage(planned, checkIds.Select(planned.Dictionary.IndexOfCheck).OfType<int>());
    }

    /// <inheritdoc/>
    public PlanView? Plan(string machineId) => _shelf.Find(machineId) is { } machine ? PlanViews.Of(_desk.Of(machine)) : null;

    /// <inheritdoc/>
    public Outcome<TriplesView>? Threes(string machineId) => _shelf.Find(machineId) is { } machine ? _desk.ThreesOf(machine) : null;

    /// <inheritdoc/>
    public EnergisingView? Energising(string machineId) => _shelf.Find(machineId) is { } machine ? _desk.EnergisingOf(machine) : null;

    /// <inheritdoc/>
    public WalkView? Walk(string machineId) => _shelf.Find(machineId) is { } machine ? WalkRound.Of(_desk.Of(machine)) : null;

    /// <inheritdoc/>
    public AskView? Ask(string machineId, IReadOnlyDictionary<string, bool> answers) =>
        _shelf.Find(machineId) is { } machine ? Asking.Of(_desk.LiveOf(machine), answers) : null;

    private async Task FixPlanAsync(Build build, LoadedMachine machine, StartBuild request, CancellationToken cancellation)
    {
        var planned = _desk.Of(machine);
        string[] checks = [.. planned.Plan.Checks.Select(check => planned.Dictionary.Checks[check].Id)];
        var instrument = string.IsNullOrWhiteSpace(request.Instrument) ? DefaultInstrument : request.Instrument.Trim();
        var person = build.Builder;
        await _journal.AppendAsync(
            build.Id,
            new EntryDraft(Guid.CreateVersion7(), person, "", new PlanFixed("wiring, dead", Fingerprint.OfText(string.Join('\n', checks)), checks)),
            cancellation);
        // Nobody has said yet that the leads are zeroed, so the record does not say it either; every step asks for it.
        await _journal.AppendAsync(
            build.Id,
            new EntryDraft(Guid.CreateVersion7(), person, "", new InstrumentDeclared(instrument, instrument, LeadsZeroed: false)),
            cancellation);
    }

    private async Task<Found?> FindAsync(string buildId, CancellationToken cancellation) =>
        Guid.TryParse(buildId, out var id)
        && await _journal.FindBuildAsync(id, cancellation) is { } build
        && _shelf.OfBuild(build.MachineFingerprint, build.MachineName) is { } machine
            ? new Found(build, _desk.Of(machine))
            : null;

    private Task<BenchState> StateOfAsync(Found found, CancellationToken cancellation) =>
        _states.OfAsync(found.Build, Summarise(found.Build), found.Planned, cancellation);

    private async Task<Outcome<BenchState>> AppendAsync(string buildId, EntryDraft draft, CancellationToken cancellation) =>
        await FindAsync(buildId, cancellation) is { } found
            ? await AppendAsync(found, draft, cancellation)
            : Outcome.Refused<BenchState>([Refusals.NoSuchBuild(buildId)]);

    private async Task<Outcome<BenchState>> AppendAsync(Found found, EntryDraft draft, CancellationToken cancellation)
    {
        if (draft.Person.Length == 0)
            return Outcome.Refused<BenchState>([Refusals.Empty("The name", "Say who you are.")]);
        try
        {
            await _journal.AppendAsync(found.Build.Id, draft, cancellation);
            return Outcome.Of(await StateOfAsync(found, cancellation));
        }
        catch (JournalException refusal)
        {
            return Outcome.Refused<BenchState>([Refusals.Journal(refusal.Message)]);
        }
    }

    private static Task<Outcome<BenchState>> Refuse(Diagnostic diagnostic) => Task.FromResult(Outcome.Refused<BenchState>([diagnostic]));

    private static string InstrumentOf(IReadOnlyList<Entry> entries) =>
        entries.Select(entry => entry.Content).OfType<InstrumentDeclared>().LastOrDefault()?.Name ?? DefaultInstrument;

    private BuildSummary Summarise(Build build) => new(
        build.Id.ToString(),
        build.Serial,
        _shelf.OfBuild(build.MachineFingerprint, build.MachineName)?.Id ?? "",
        build.MachineName,
        build.Builder,
        build.Started);

    private sealed record Found(Build Build, PlannedMachine Planned);
}
