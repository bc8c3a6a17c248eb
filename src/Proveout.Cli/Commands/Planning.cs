using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Plans a machine while a person waits.</summary>
internal static class Planning
{
    /// <summary>One for the process: whoever asks, each version of a machine is planned once.</summary>
    public static PlanDesk Desk { get; } = new();

    /// <summary>The machine with its plan.</summary>
    public static Task<PlannedMachine> RunAsync(Terminal terminal, LoadedMachine machine, bool onlyGreedy, CancellationToken cancellation) => Progress.ShowAsync(
        terminal,
        $"Simulating every plausible mistake of {machine.Design.Name} and choosing the checks",
        () => onlyGreedy ? PlannedMachine.Of(machine, onlyGreedy, cancellation) : Desk.Of(machine),
        cancellation);
}
