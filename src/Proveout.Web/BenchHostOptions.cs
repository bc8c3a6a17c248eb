using System.Net;

namespace Proveout.Web;

/// <summary>Where the bench listens.</summary>
public sealed record BenchHostOptions
{
    /// <summary>The address; a loopback address, because the bench knows no log-in.</summary>
    public IPAddress Address { get; init; } = IPAddress.Loopback;

    /// <summary>The port, 1 to 65535; 0 takes a free one.</summary>
    public int Port { get; init; }

    /// <summary>Where a meter listens that gives its reading by itself; null when there is none. Given once at the start, never by a page.</summary>
    public DnsEndPoint? Meter { get; init; }
}
