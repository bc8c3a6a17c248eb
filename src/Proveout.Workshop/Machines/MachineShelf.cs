namespace Proveout.Workshop;

/// <summary>The machines that a build can be started from.</summary>
/// <param name="files">Reads them.</param>
/// <param name="paths">Paths of machine files and folders; of two with one name the first counts.</param>
public sealed class MachineShelf(MachineFiles files, IEnumerable<string> paths)
{
    private readonly Lazy<IReadOnlyList<LoadedMachine>> _machines = new(() =>
        [.. paths.Select(files.Read).Select(outcome => outcome.Value).OfType<LoadedMachine>().SelectMany(StagesOf).DistinctBy(machine => machine.Id)]);

    /// <summary>The machines that can be read, in the order given, each with the stages before it.</summary>
    public IReadOnlyList<LoadedMachine> Machines => _machines.Value;

    // A build is started from what is there: the whole machine, or a stage of it.
    private static IEnumerable<LoadedMachine> StagesOf(LoadedMachine machine) => [machine, .. StagedMachines.Before(machine)];

    /// <summary>The machine with an identifier, or null.</summary>
    public LoadedMachine? Find(string id) => Machines.FirstOrDefault(machine => machine.Id == id);

    /// <summary>The machine that a build was started from: by fingerprint, else, if its file has changed since, by name; null when it is gone.</summary>
    public LoadedMachine? OfBuild(string fingerprint, string name) =>
        Machines.FirstOrDefault(machine => machine.Fingerprint == fingerprint) ?? Machines.FirstOrDefault(machine => machine.Design.Name == name);
}
