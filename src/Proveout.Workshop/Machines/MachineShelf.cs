using System.Collections.Concurrent;

namespace Proveout.Workshop;

/// <summary>The machines that a build can be started from.</summary>
/// <remarks>What is changed on disk, by the editor or by something else, shows without a restart; a file that cannot be read leaves the machine as it was.</remarks>
public sealed class MachineShelf
{
    // Looking at the disk more often would cost more than anybody would notice.
    private const long LookEveryMilliseconds = 1000;

    // Earlier revisions that builds in work were started from.
    private const int MostOlder = 100;

    private readonly MachineFiles _files;
    private readonly IReadOnlyList<string> _paths;
    private readonly string? _ownFolder;
    private readonly TimeProvider _clock;
    private readonly Lock _gate = new();
    private readonly ConcurrentDictionary<string, MachineHistory> _histories = new(StringComparer.Ordinal);
    private readonly RecentlyUsed<string, LoadedMachine?> _older = new(MostOlder);
    private readonly Dictionary<string, ShelvedMachine> _shelved = new(StringComparer.Ordinal);
    private volatile IReadOnlyList<LoadedMachine>? _machines;
    private long _looked;

    /// <summary>Puts machines on the shelf; each is read at the first look.</summary>
    /// <param name="files">Reads them.</param>
    /// <param name="paths">Paths of machine files and folders; of two with one name the first counts.</param>
    /// <param name="ownFolder">Folder whose folders are machines too; new ones are made in it. Null when there is none.</param>
    /// <param name="clock">Tells the time; that of the system when left out.</param>
    public MachineShelf(MachineFiles files, IEnumerable<string> paths, string? ownFolder = null, TimeProvider? clock = null) =>
        (_files, _paths, _ownFolder, _clock) = (files, [.. paths], ownFolder, clock ?? TimeProvider.System);

    /// <summary>The machines that can be read, in the order given, each with the stages before it.</summary>
    public IReadOnlyList<LoadedMachine> Machines
    {
        get
        {
            if (_machines is { } known && Environment.TickCount64 - Interlocked.Read(ref _looked) < LookEveryMilliseconds)
                return known;
            lock (_gate)
            {
                _machines = Look();
                Interlocked.Exchange(ref _looked, Environment.TickCount64);
                return _machines;
            }
        }
    }

    /// <summary>The machine with an identifier, or null.</summary>
    public LoadedMachine? Find(string id) => Machines.FirstOrDefault(machine => machine.Id == id);

    /// <summary>
    /// The machine that a build was started from, as it was then: by fingerprint, among the machines and then among their earlier revisions;
    /// else, if its file was changed without leaving a revision, by name; null when it is gone.
    /// </summary>
    public LoadedMachine? OfBuild(string fingerprint, string name)
    {
        var machines = Machines;
        return machines.FirstOrDefault(machine => machine.Fingerprint == fingerprint)
            ?? _older.GetOrMake(fingerprint, () => Earlier(fingerprint))
            ?? machines.FirstOrDefault(machine => machine.Design.Name == name);
    }

    /// <summary>The revisions of the machine at a path.</summary>
    internal MachineHistory HistoryOf(string path) => _histories.GetOrAdd(path, _ => new(_files, path, _clock));

    /// <summary>The revisions of the machine with an identifier, which may be that of one of its stages; null when there is none.</summary>
    internal MachineHistory? HistoryOfMachine(string id) => Find(id) is { } machine ? HistoryOf(machine.Path) : null;

    /// <summary>Somebody changed a machine: look at the disk when asked next.</summary>
    internal void Forget()
    {
        _machines = null;
        LookAgainForUnknown();
    }

    private void LookAgainForUnknown() => _older.Drop(machine => machine is null);

    private LoadedMachine[] Look() =>
        [.. _paths.Concat(OwnMachines.In(_ownFolder)).Distinct(StringComparer.Ordinal).Select(Shelved).OfType<LoadedMachine>().SelectMany(StagesOf).DistinctBy(machine => machine.Id)];

    private LoadedMachine? Shelved(string path)
    {
        var before = _shelved.GetValueOrDefault(path);
        var stamp = FileStamp.Of(path);
        if (before is not null && before.Stamp == stamp)
            return before.Machine;
        var machine = Read(path) ?? before?.Machine;
        LookAgainForUnknown();
        // Settling what was changed may write, so the stamp is taken anew.
        _shelved[path] = new(FileStamp.Of(path), machine);
        return machine;
    }

    private LoadedMachine? Read(string path)
    {
        try
        {
            return HistoryOf(path).Current()?.Machine;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private LoadedMachine? Earlier(string fingerprint)
    {
        foreach (var path in _paths.Concat(OwnMachines.In(_ownFolder)))
            if (HistoryOf(path) is var history && history.Folder.Revisions().LastOrDefault(revision => revision.Fingerprints.Contains(fingerprint)) is { } revision)
                return history.At(revision.Number) is { } then ? StagesOf(then.Machine).FirstOrDefault(machine => machine.Fingerprint == fingerprint) : null;
        return null;
    }

    // A build is started from what is there: the whole machine, or a stage of it.
    private static IEnumerable<LoadedMachine> StagesOf(LoadedMachine machine) => [machine, .. StagedMachines.Before(machine)];

    private sealed record ShelvedMachine(string Stamp, LoadedMachine? Machine);
}
