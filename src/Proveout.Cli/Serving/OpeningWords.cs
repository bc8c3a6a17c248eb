using System.Net;

namespace Proveout.Cli;

/// <summary>How the bench is to be opened to a network, as it was asked for.</summary>
/// <param name="Address">Where it listens.</param>
/// <param name="Names">Names that it may be called by.</param>
/// <param name="Proxies">Proxies whose word is taken.</param>
/// <param name="Certificate">A file with a certificate; null for none.</param>
/// <param name="CertificateKey">The file of its key when the certificate is a PEM file.</param>
internal sealed record OpeningWords(IPAddress Address, IReadOnlyList<string> Names, IReadOnlyList<IPAddress> Proxies, string? Certificate, string? CertificateKey)
{
    /// <summary>This computer alone, which asks nobody who they are.</summary>
    public bool IsClosed => IPAddress.IsLoopback(Address) && Names.Count == 0 && Proxies.Count == 0 && Certificate is null;

    /// <summary>True when it listens on every address of this computer.</summary>
    public bool IsEverywhere => Address.Equals(IPAddress.Any) || Address.Equals(IPAddress.IPv6Any);

    /// <summary>True when others reach it without TLS in between.</summary>
    public bool IsReadable => Certificate is null && !IPAddress.IsLoopback(Address);

    /// <summary>The host names that are answered to.</summary>
    public IReadOnlyList<string> Hosts => IsEverywhere ? Names : [.. Names, HostOf(Address)];

    /// <summary>An address as it stands in a URL (RFC 3986, 3.2.2).</summary>
    public static string HostOf(IPAddress address) => address.AddressFamily == System.Net.Sockets.AddressFamily.InterNetworkV6 ? $"[{address}]" : address.ToString();
}
