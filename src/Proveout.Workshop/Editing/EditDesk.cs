using System.Collections.Concurrent;
using Proveout.Engine.Electrical;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Changes the machines of a shelf.</summary>
/// <param name="files">Reads machines.</param>
/// <param name="shelf">The machines.</param>
/// <param name="places">Where machines may be written.</param>
/// <param name="clock">Tells the time.</param>
public sealed class EditDesk(MachineFiles files, MachineShelf shelf, EditPlaces places, TimeProvider clock) : IEditDesk
{
    private readonly ConcurrentDictionary<string, (string Fingerprint, IReadOnlyList<Finding> Findings)> _findings = new(StringComparer.Ordinal);
    private readonly OwnMachineMaker _maker = new(files, shelf, places, clock);

    /// <inheritdoc/>
    public EditView? View(string machineId)
    {
        if (shelf.HistoryOfMachine(machineId) is not { } history || history.Current() is not { } now)
            return null;
        var revisions = history.Folder.Revisions();
        var stack = UndoStack.Of(revisions);
        return new(now.Machine.Summary, now.Machine.Design, now.Revision, now.Texts, places.MayWrite(history.MachinePath), FindingsOf(now.Machine), TypesOf(now.Machine.Design))
        {
            Undo = revisions.FirstOrDefault(revision => revision.Number == stack.Undo),
            Redo = revisions.FirstOrDefault(revision => revision.Number == stack.Redo),
            Drafts = history.Folder.OpenDrafts(),
        };
    }

    /// <inheritdoc/>
    public Task<Outcome<MachineSummary>> CreateAsync(string name, string text, string person, CancellationToken cancellation) =>
        Task.Run(() => _maker.Make(name, [new("machine.yaml", text)], person), cancellation);

    /// <inheritdoc/>
    public Task<Outcome<MachineSummary>> CopyAsync(string machineId, string name, string person, CancellationToken cancellation) => Task.Run(
        () => shelf.HistoryOfMachine(machineId)?.Current() is { } now
            ? _maker.Make(name, now.Texts, person)
            : Outcome.Refused<MachineSummary>([Refusals.NoSuchMachine(machineId)]),
        cancellation);

    /// <inheritdoc/>
    public SaveAnswer Save(string machineId, SaveEdits request) => With(machineId, request.Person, history => new EditSaving(files, history).Save(request));

    /// <inheritdoc/>
    public SaveAnswer Save(string machineId, SaveText request) => With(machineId, request.Person, history => new TextSaving(files, history, clock).Save(request));

    /// <inheritdoc/>
    public IReadOnlyList<Diagnostic> Check(string machineId, string file, string text) =>
        shelf.HistoryOfMachine(machineId) is { } history && history.Current() is { } now
            ? files.Read([.. now.Texts.Select(each => each.File == file ? each with { Text = text } : each)], history.MachinePath).Diagnostics
            : [Refusals.NoSuchMachine(machineId)];

    /// <inheritdoc/>
    public SaveAnswer Undo(string machineId, int revision, string person) => With(machineId, person, history => new StepSaving(history).Undo(revision, person));

    /// <inheritdoc/>
    public SaveAnswer Redo(string machineId, int revision, string person) => With(machineId, person, history => new StepSaving(history).Redo(revision, person));

    /// <inheritdoc/>
    public MachineDraft? Draft(string machineId, int number) => shelf.HistoryOfMachine(machineId)?.Folder.Draft(number);

    /// <inheritdoc/>
    public IReadOnlyList<RevisionView>? Revisions(string machineId)
    {
        if (shelf.HistoryOfMachine(machineId) is not { } history || history.Current() is null)
            return null;
        var revisions = history.Folder.Revisions();
        var designs = revisions.Select(revision => history.At(revision.Number)?.Machine.Design).ToArray();
        return
        [
            .. revisions.Select((revision, at) => new RevisionView(
                revision, at > 0 && designs[at - 1] is { } before && designs[at] is { } after ? DesignChanges.Between(before, after) : [])).Reverse(),
        ];
    }

    /// <inheritdoc/>
    public IReadOnlyList<SourceText>? FilesAt(string machineId, int revision) => shelf.HistoryOfMachine(machineId)?.At(revision)?.Texts;

    /// <inheritdoc/>
    public string? Wires(string machineId) => shelf.HistoryOfMachine(machineId)?.Current() is { } now ? WireTable.Write(now.Texts) : null;

    /// <inheritdoc/>
    public Outcome<WireImport> LookAtWires(string machineId, NamedText list, bool removeUnlisted) =>
        shelf.HistoryOfMachine(machineId) is { } history && history.Current() is { } now
            ? new WireImports(files).Of(now.Texts, history.MachinePath, list, removeUnlisted)
            : Outcome.Refused<WireImport>([Refusals.NoSuchMachine(machineId)]);

    private SaveAnswer With(string machineId, string person, Func<MachineHistory, SaveAnswer> save)
    {
        if (shelf.HistoryOfMachine(machineId) is not { } history)
            return SaveAnswer.Refuse(0, Refusals.NoSuchMachine(machineId));
        if (string.IsNullOrWhiteSpace(person))
            return SaveAnswer.Refuse(0, Refusals.Empty("The name", "Say who you are."));
        if (!places.MayWrite(history.MachinePath))
            return SaveAnswer.Refuse(0, EditRefusals.Sample());
        try
        {
            return save(history);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return SaveAnswer.Refuse(0, EditRefusals.Unwritable(history.MachinePath));
        }
        finally
        {
            shelf.Forget();
        }
    }

    private IReadOnlyList<Finding> FindingsOf(LoadedMachine machine) => _findings.AddOrUpdate(
        machine.Path,
        _ => (machine.Fingerprint, DesignReview.Of(machine.Design)),
        (_, known) => known.Fingerprint == machine.Fingerprint ? known : (machine.Fingerprint, DesignReview.Of(machine.Design))).Findings;

    private IReadOnlyList<PartType> TypesOf(MachineDesign design) =>
        [.. design.Parts.Select(part => part.Type).Concat(files.Catalogue.Value?.Types ?? []).DistinctBy(type => type.Id).OrderBy(type => type.Id, StringComparer.Ordinal)];
}
