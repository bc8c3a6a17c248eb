using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Opens the build of a machine with a serial number, or starts it.</summary>
internal static class BenchStart
{
    public static async Task<Outcome<OpenedBuild>> OpenAsync(
        Terminal terminal, MachineFiles files, string path, string journal, string? serial, string? builder, CancellationToken cancellation)
    {
        var read = files.Read(path);
        if (read.Value is not { } machine)
            return Outcome.Refused<OpenedBuild>(read.Diagnostics);
        var workplace = await Workplace.OpenAsync(files, [path], journal, cancellation);
        await Planning.RunAsync(terminal, machine, onlyGreedy: false, cancellation);
        if (serial is not null && await FindAsync(workplace, machine, serial, cancellation) is { } found)
            return Outcome.Of(new OpenedBuild(workplace, found));
        var started = await StartAsync(terminal, workplace, machine, serial, builder, cancellation);
        if (started.Value is { } build)
            return Outcome.Of(new OpenedBuild(workplace, (await workplace.Journal.FindBuildAsync(Guid.Parse(build.Id), cancellation))!));
        await workplace.DisposeAsync();
        return Outcome.Refused<OpenedBuild>(started.Diagnostics);
    }

    private static async Task<Build?> FindAsync(Workplace workplace, LoadedMachine machine, string serial, CancellationToken cancellation) =>
        (await workplace.Journal.ListBuildsAsync(cancellation)).FirstOrDefault(build => build.Serial == serial && build.MachineName == machine.Design.Name);

    private static async Task<Outcome<BuildSummary>> StartAsync(
        Terminal terminal, Workplace workplace, LoadedMachine machine, string? serial, string? builder, CancellationToken cancellation)
    {
        var name = builder ?? (terminal.IsTyped ? await terminal.AskAsync("Who builds it? ", cancellation) : null);
        return string.IsNullOrWhiteSpace(name)
            ? Outcome.Refused<BuildSummary>([new Diagnostic("no-builder", new SourcePlace("bench", 0, 0), "A new build needs the name of its builder.", "Give it with --builder.")])
            : await workplace.Bench.StartAsync(new StartBuild(machine.Id, serial ?? "", name, ""), cancellation);
    }
}
