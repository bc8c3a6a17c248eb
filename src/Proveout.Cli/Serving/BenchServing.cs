using Microsoft.AspNetCore.Builder;
using Proveout.Web;

namespace Proveout.Cli;

/// <summary>Serves the bench until it is told to stop. A class of its own, so that no other command loads the web server.</summary>
internal static class BenchServing
{
    private static readonly TimeSpan GraceForOpenPages = TimeSpan.FromSeconds(1);

    public static async Task<int> RunAsync(Terminal terminal, Workplace workplace, int port, CancellationToken cancellation)
    {
        await using var app = BenchHost.Build(new BenchHostOptions { Port = port }, workplace.Desks);
        try
        {
            await app.StartAsync(cancellation);
        }
        catch (IOException)
        {
            return terminal.Refuse("port-taken", $"port {port}", "Another program listens on this port.", "Give another one, or leave --port out for a free one.");
        }

        // Beside the first page; whoever needs it sooner waits for it, and is told if it fails.
        _ = workplace.Desks.Builds.PrepareAsync(cancellation);
        terminal.Say($"Bench: {app.Urls.First().TrimEnd('/')}/");
        terminal.Say("Open this address in a browser on this computer. Ctrl-C ends it; every entry is on the disk already.");
        await UntilToldAsync(cancellation);
        await StopAsync(app);
        return ExitCode.Interrupted;
    }

    private static async Task UntilToldAsync(CancellationToken cancellation)
    {
        var told = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        await using var registration = cancellation.Register(told.SetResult);
        await told.Task;
    }

    private static async Task StopAsync(WebApplication app)
    {
        using var grace = new CancellationTokenSource(GraceForOpenPages);
        await app.StopAsync(grace.Token);
    }
}
