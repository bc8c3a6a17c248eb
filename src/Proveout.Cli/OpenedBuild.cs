using Proveout.Engine.Machine;
using Proveout.Journal;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A build of a journal, with its machine planned.</summary>
internal sealed class OpenedBuild : IAsyncDisposable
{
    public OpenedBuild(Workplace workplace, Build build) => (Workplace, Build) = (workplace, build);

    public Workplace Workplace { get; }

    public Build Build { get; }

    /// <summary>Opens the journal, finds the build among the machines and samples, and plans its machine while a person waits.</summary>
    /// <exception cref="JournalException">The journal cannot be opened.</exception>
    public static async Task<Outcome<OpenedBuild>> OpenAsync(
        Terminal terminal, MachineFiles files, IReadOnlyList<string> machines, string journal, string wanted, CancellationToken cancellation)
    {
        var unreadable = machines.SelectMany(machine => files.Read(machine).Diagnostics).ToArray();
        if (unreadable.Length > 0)
            return Outcome.Refused<OpenedBuild>(unreadable);
        var opened = await Workplace.OpenExistingAsync(files, [.. machines, .. Places.SampleMachines], journal, cancellation);
        if (opened.Value is not { } workplace)
            return Outcome.Refused<OpenedBuild>(opened.Diagnostics);
        var found = await new BuildSearch(workplace.Journal).FindAsync(wanted, cancellation);
        var planned = found.Value is { } build ? await workplace.PlanAsync(terminal, build, cancellation) : null;
        if (planned?.Value is not null)
            return Outcome.Of(new OpenedBuild(workplace, found.Value!));
        await workplace.DisposeAsync();
        return Outcome.Refused<OpenedBuild>(planned?.Diagnostics ?? found.Diagnostics);
    }

    /// <summary>Where the build stands.</summary>
    public async Task<BenchState> StateAsync(CancellationToken cancellation) => (await Workplace.Bench.StateAsync(Build.Id.ToString(), cancellation))!;

    public ValueTask DisposeAsync() => Workplace.DisposeAsync();
}
