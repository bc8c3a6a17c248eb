using Microsoft.AspNetCore.Builder;
using Proveout.Web;

namespace Proveout.Cli;

/// <summary>Serves the bench until it is told to stop. A class of its own, so that no other command loads the web server.</summary>
internal static class BenchServing
{
    // Longer than the slowest page, shorter than the 30 s that a service manager waits (deploy/proveout.service).
    private static readonly TimeSpan GraceForRequests = TimeSpan.FromSeconds(20);

    public static async Task<int> RunAsync(Terminal terminal, Workplace workplace, BenchHostOptions options, CancellationToken cancellation)
    {
        using var signals = new StopSignals();
        await using var app = BenchHost.Build(options, workplace.Desks);
        try
        {
            await app.StartAsync(cancellation);
        }
        catch (IOException)
        {
            return terminal.Refuse("port-taken", $"port {options.Port}", "Another program listens on this port.", "Give another one, or leave --port out for a free one.");
        }

        terminal.Say($"Bench: {app.Urls.First().TrimEnd('/')}/");
        terminal.Say("Open this address in a browser on this computer. Ctrl-C ends it; every entry is on the disk already.");
        var exit = await signals.Told;
        await StopAsync(app, signals);
        return exit;
    }

    /// <summary>Takes no new requests, ends the event streams, and lets requests under way finish.</summary>
    private static async Task StopAsync(WebApplication app, StopSignals signals)
    {
        using var grace = CancellationTokenSource.CreateLinkedTokenSource(signals.Again);
        grace.CancelAfter(GraceForRequests);
        try
        {
            await app.StopAsync(grace.Token);
        }
        catch (OperationCanceledException)
        {
            // A request was cut off. What it had entered is on the disk; what it had not, it did not acknowledge.
        }
    }
}
