namespace Proveout.Cli;

/// <summary>Says on the error stream what goes on when something takes longer than a second.</summary>
internal static class Progress
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Again = TimeSpan.FromSeconds(10);

    /// <summary>Runs the work on another thread, and returns early when cancelled.</summary>
    public static async Task<T> ShowAsync<T>(Terminal terminal, string what, Func<T> work, CancellationToken cancellation)
    {
        var running = Task.Run(work, cancellation);
        for (var patience = Patience; await Task.WhenAny(running, Task.Delay(patience, cancellation)) != running; patience = Again)
        {
            cancellation.ThrowIfCancellationRequested();
            terminal.Complain($"{what} ...");
        }

        return await running;
    }
}
