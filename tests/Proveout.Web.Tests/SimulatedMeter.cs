using System.Net;
using System.Net.Sockets;

namespace Proveout.Web.Tests;

/// <summary>An instrument of our own on this computer: answers *IDN? and one question, each with a line.</summary>
internal sealed class SimulatedMeter : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _ending = new();
    private readonly Task _serving;

    /// <summary>Starts it.</summary>
    /// <param name="answer">What it answers to a question for a value; null when it closes the way instead.</param>
    public SimulatedMeter(string? answer)
    {
        _listener.Start();
        _serving = ServeAsync(answer);
    }

    public DnsEndPoint Address => new("127.0.0.1", ((IPEndPoint)_listener.LocalEndpoint).Port);

    /// <summary>Every question asked, in order.</summary>
    public List<string> Asked { get; } = [];

    public async ValueTask DisposeAsync()
    {
        await _ending.CancelAsync();
        _listener.Stop();
        await _serving;
        _ending.Dispose();
    }

    private async Task ServeAsync(string? answer)
    {
        try
        {
            while (true)
            {
                using var caller = await _listener.AcceptTcpClientAsync(_ending.Token);
                await AnswerAsync(caller, answer);
            }
        }
        catch (Exception exception) when (exception is OperationCanceledException or SocketException or IOException)
        {
            // It is switched off.
        }
    }

    private async Task AnswerAsync(TcpClient caller, string? answer)
    {
        using var reader = new StreamReader(caller.GetStream());
        await using var writer = new StreamWriter(caller.GetStream()) { AutoFlush = true, NewLine = "\n" };
        while (await reader.ReadLineAsync(_ending.Token) is { } question)
        {
            Asked.Add(question);
            if (question != "*IDN?" && answer is null)
                return;
            await writer.WriteLineAsync(question == "*IDN?" ? "Own make,<b>simulated</b>,1,0" : answer);
        }
    }
}
