using System.Net.Sockets;
using System.Text;

namespace Proveout.Journal.Trials.Servers;

/// <summary>A wire between a program and a PostgreSQL server that breaks at a moment of our choice, once.</summary>
public sealed class CuttingWire : IDisposable
{
    private readonly Socket _door = new(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("proveout-wire-");
    private readonly string _server;
    private byte[]? _moment;

    /// <param name="serverFolder">Where the server has its socket.</param>
    public CuttingWire(string serverFolder)
    {
        _server = SocketIn(serverFolder);
        _door.Bind(new UnixDomainSocketEndPoint(SocketIn(Folder)));
        _door.Listen();
        _ = AcceptAsync();
    }

    /// <summary>Where this end has its socket.</summary>
    public string Folder => _folder.FullName;

    /// <summary>Whether the server still gets what was sent last, so that only its answer is lost.</summary>
    public bool LastWordsArrive { get; set; }

    /// <summary>How often it broke.</summary>
    public int Cuts { get; private set; }

    /// <summary>Breaks when the program next sends this text.</summary>
    public void CutAt(string text) => Volatile.Write(ref _moment, Encoding.ASCII.GetBytes(text));

    public void Dispose()
    {
        _door.Dispose();
        _folder.Delete(recursive: true);
    }

    private static string SocketIn(string folder) => Path.Combine(folder, ".s.PGSQL.5432");

    private async Task AcceptAsync()
    {
        try
        {
            while (true)
                _ = CarryAsync(await _door.AcceptAsync());
        }
        catch (Exception end) when (end is SocketException or ObjectDisposedException)
        {
            // The wire was taken away.
        }
    }

    private async Task CarryAsync(Socket near)
    {
        using var far = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        using (near)
        {
            await far.ConnectAsync(new UnixDomainSocketEndPoint(_server));
            var answersAreLost = false;
            var back = PumpAsync(far, near, _ => answersAreLost);
            await PumpAsync(near, far, bytes =>
            {
                if (Volatile.Read(ref _moment) is not { } moment || bytes.Span.IndexOf(moment) < 0)
                    return false;
                Volatile.Write(ref _moment, null);
                Cuts++;
                answersAreLost = true;
                return !LastWordsArrive;
            });
            if (answersAreLost && LastWordsArrive)
                await back;
        }
    }

    /// <summary>Carries bytes until an end closes, or until <paramref name="breaks"/> says that these do not arrive any more.</summary>
    private static async Task PumpAsync(Socket from, Socket to, Func<ReadOnlyMemory<byte>, bool> breaks)
    {
        var buffer = new byte[65536];
        try
        {
            while (await from.ReceiveAsync(buffer) is var count and > 0)
            {
                if (breaks(buffer.AsMemory(0, count)))
                {
                    from.Shutdown(SocketShutdown.Both);
                    to.Shutdown(SocketShutdown.Both);
                    return;
                }
                await to.SendAsync(buffer.AsMemory(0, count));
            }
        }
        catch (Exception end) when (end is SocketException or ObjectDisposedException)
        {
            // One of the ends is gone, and with it the wire.
        }
    }
}
