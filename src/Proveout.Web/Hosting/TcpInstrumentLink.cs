using System.Net;
using System.Net.Sockets;
using System.Text;
using Proveout.Workshop;

namespace Proveout.Web.Hosting;

/// <summary>Lines of text over TCP, each ended by a line feed (IEEE 488.2, program and response message terminators).</summary>
internal sealed class TcpInstrumentLink(DnsEndPoint address) : IInstrumentLink
{
    public async Task<IInstrumentLine> OpenAsync(CancellationToken cancellation)
    {
        var socket = new TcpClient { NoDelay = true };
        try
        {
            await socket.ConnectAsync(address.Host, address.Port, cancellation);
            return new Line(socket);
        }
        catch (SocketException exception)
        {
            socket.Dispose();
            throw new IOException("The instrument cannot be reached.", exception);
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }

    private sealed class Line(TcpClient socket) : IInstrumentLine
    {
        private const int LongestAnswer = 512;

        private readonly byte[] _held = new byte[LongestAnswer];

        public async Task<string> AskAsync(string question, CancellationToken cancellation)
        {
            var stream = socket.GetStream();
            await stream.WriteAsync(Encoding.ASCII.GetBytes(question + "\n"), cancellation);
            var length = 0;
            while (length < _held.Length)
            {
                var read = await stream.ReadAsync(_held.AsMemory(length), cancellation);
                if (read == 0)
                    throw new IOException("The instrument closed the way before it answered.");
                length += read;
                if (Array.IndexOf(_held, (byte)'\n', 0, length) is >= 0 and var end)
                    return Encoding.ASCII.GetString(_held, 0, end).Trim();
            }

            throw new IOException("The instrument answers with more than a value.");
        }

        public ValueTask DisposeAsync()
        {
            socket.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
