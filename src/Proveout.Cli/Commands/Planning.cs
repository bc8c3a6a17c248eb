using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Plans a machine while a person waits.</summary>
internal static class Planning
{
    public static Task<PlannedMachine> RunAsync(Terminal terminal, LoadedMachine machine, bool onlyGreedy, CancellationToken cancellation) =>
        Progress.ShowAsync(terminal, Sentence(machine), () => PlannedMachine.Of(machine, onlyGreedy, cancellation), cancellation);

    /// <summary>What goes on meanwhile.</summary>
    public static string Sentence(LoadedMachine machine) => $"Simulating every plausible mistake of {machine.Design.Name} and choosing the checks";
}
