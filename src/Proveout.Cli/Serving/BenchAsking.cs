using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Asks a bench that is being served how it is. A class of its own, so that no other command loads what asking needs.</summary>
internal static class BenchAsking
{
    // Longer than the bench itself waits for its journal.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    /// <summary>What the bench on a port of this computer answers; that nothing does is a finding too.</summary>
    public static async Task<BenchHealth> AskAsync(int port, CancellationToken cancellation)
    {
        // Nothing stands between two programs of one computer.
        using var handler = new SocketsHttpHandler { UseProxy = false, AllowAutoRedirect = false };
        using var client = new HttpClient(handler) { Timeout = Patience };
        try
        {
            using var answer = await client.GetAsync(new Uri($"http://127.0.0.1:{port}/health/ready"), cancellation);
            return HealthText.Read(await answer.Content.ReadAsStringAsync(cancellation))
                ?? Silent($"What answers on port {port} is not the bench.", "Give the port that `proveout serve` was started with.");
        }
        catch (HttpRequestException)
        {
            return Silent($"Nothing answers on port {port} of this computer.", "Start the bench, `proveout serve --port N`, or give the port that it was started with.");
        }
        catch (TaskCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return Silent($"The bench on port {port} does not answer.", "Look into its log, and start it anew.");
        }
    }

    private static BenchHealth Silent(string sentence, string mend) => new("", [new HealthFinding("answer", false, sentence, mend)]);
}
