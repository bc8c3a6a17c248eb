using System.Net;

namespace Proveout.Web;

/// <summary>Where the bench listens.</summary>
public sealed record BenchHostOptions
{
    /// <summary>The address; one that others can reach only together with <see cref="Opening"/>.</summary>
    public IPAddress Address { get; init; } = IPAddress.Loopback;

    /// <summary>The port, 1 to 65535; 0 takes a free one.</summary>
    public int Port { get; init; }

    /// <summary>Opens the bench to a network, behind a sign-in; null for this computer alone, which asks nobody who they are.</summary>
    public NetworkOpening? Opening { get; init; }

    /// <summary>What it writes to the error stream about its work.</summary>
    public LogShape Log { get; init; }

    /// <summary>Whether it counts and measures its work, and tells at `/metrics` on this computer.</summary>
    public bool Metrics { get; init; }

    /// <summary>Where a meter listens that gives its reading by itself; null when there is none. Given once at the start, never by a page.</summary>
    public DnsEndPoint? Meter { get; init; }
}
