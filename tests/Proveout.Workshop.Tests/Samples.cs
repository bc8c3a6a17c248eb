using Proveout.Engine.Machine;

namespace Proveout.Workshop.Tests;

/// <summary>The samples of the repository, planned once for all tests.</summary>
internal static class Samples
{

    public static string Root { get; } = FindRoot();

    public static MachineFiles Files { get; } = new(Path.Combine(Root, "catalogue"));

    /// <summary>Plans each sample at its first use; the bench of the tests plans with it too.</summary>
    public static PlanDesk Desk { get; } = new();

    public static PlannedMachine Pennywort => Planned("pennywort");

    public static string PathOf(string name) => Path.Combine(Root, "samples", name);

    public static LoadedMachine Load(string name) => Required(Files.Read(PathOf(name)));

    public static PlannedMachine Planned(string name) => Desk.Of(Load(name));

    private static LoadedMachine Required(Outcome<LoadedMachine> outcome) =>
        outcome.Value ?? throw new InvalidOperationException(string.Join('\n', outcome.Diagnostics));

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Proveout.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests run from inside the repository.");
    }
}
