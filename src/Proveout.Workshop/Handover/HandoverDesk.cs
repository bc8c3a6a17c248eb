using Proveout.Engine.Machine;
using Proveout.Journal;

namespace Proveout.Workshop;

/// <summary>Hands over machines of a shelf and builds of a journal.</summary>
/// <param name="shelf">The machines.</param>
/// <param name="journal">Keeps the builds.</param>
public sealed class HandoverDesk(MachineShelf shelf, IJournal journal) : IHandoverDesk
{
    // Every revision that somebody looks at has its own.
    private const int Most = 40;

    private readonly RecentlyUsed<string, SettingsView> _asDesigned = new(Most);
    private readonly RecentlyUsed<string, AcceptanceView> _lists = new(Most);
    private readonly MeasuringDesk _measurements = new(journal);

    /// <inheritdoc/>
    public SettingsView? SettingsOfMachine(string machineId) => shelf.Find(machineId) is { } machine ? AsDesigned(machine) : null;

    /// <inheritdoc/>
    public async Task<SettingsView?> SettingsOfBuildAsync(string buildId, CancellationToken cancellation) =>
        await FindAsync(buildId, cancellation) is var (build, machine)
            ? SettingsSheet.WithMeasurements(AsDesigned(machine), build.Serial, (await _measurements.OfBuildAsync(buildId, cancellation))!)
            : null;

    /// <inheritdoc/>
    public AcceptanceView? AcceptanceOfMachine(string machineId) => shelf.Find(machineId) is { } machine ? ListOf(machine) : null;

    /// <inheritdoc/>
    public async Task<BuildAcceptance?> AcceptanceOfBuildAsync(string buildId, CancellationToken cancellation) =>
        await FindAsync(buildId, cancellation) is var (_, machine)
            ? new(ListOf(machine), AcceptanceAnswers.Latest((await _measurements.OfBuildAsync(buildId, cancellation))!))
            : null;

    /// <inheritdoc/>
    public async Task<Outcome<KeptMeasurement>> AcceptAsync(string buildId, string itemId, string found, string note, string person, Guid key, CancellationToken cancellation)
    {
        if (await FindAsync(buildId, cancellation) is not var (_, machine))
            return Outcome.Refused<KeptMeasurement>([Refusals.NoSuchBuild(buildId)]);
        if (ListOf(machine).Items.FirstOrDefault(item => item.Id == itemId) is not { } item)
            return Outcome.Refused<KeptMeasurement>([Refusals.Empty("The item", "Open the list anew: there is no such item on it.")]);
        if (found is not (AcceptanceAnswers.Good or AcceptanceAnswers.NotGood))
            return Outcome.Refused<KeptMeasurement>([Refusals.Empty("The answer", "Say whether it is as it should be.")]);
        return found == AcceptanceAnswers.NotGood && string.IsNullOrWhiteSpace(note)
            ? Outcome.Refused<KeptMeasurement>([Refusals.Empty("The note", "Say what you saw: whoever looks next needs it.")])
            : await _measurements.KeepAsync(buildId, AcceptanceAnswers.RequestOf(item, found, note.Trim(), person, key), cancellation);
    }

    private async Task<(Build Build, LoadedMachine Machine)?> FindAsync(string buildId, CancellationToken cancellation) =>
        Guid.TryParse(buildId, out var id)
        && await journal.FindBuildAsync(id, cancellation) is { } build
        && shelf.OfBuild(build.MachineFingerprint, build.MachineName) is { } machine
            ? (build, machine)
            : null;

    private SettingsView AsDesigned(LoadedMachine machine) => _asDesigned.GetOrMake(machine.Fingerprint, () => SettingsSheet.Of(machine));

    private AcceptanceView ListOf(LoadedMachine machine) => _lists.GetOrMake(machine.Fingerprint, () => AcceptanceList.Of(machine));
}
