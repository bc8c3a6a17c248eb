using System.Globalization;
using System.Net;

namespace Proveout.Cli;

/// <summary>Reads where a meter listens.</summary>
internal static class MeterAddress
{
    /// <summary>The address of <c>HOST:PORT</c> or <c>[v6]:PORT</c>; null when the text is none.</summary>
    public static DnsEndPoint? TryRead(string text)
    {
        var colon = text.LastIndexOf(':');
        if (colon < 1 || !int.TryParse(text[(colon + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var port) || port is < 1 or > 65535)
            return null;
        var host = text[..colon];
        if (host is ['[', .. var inner, ']'])
            host = inner;
        return Uri.CheckHostName(host) == UriHostNameType.Unknown || (host.Contains(':', StringComparison.Ordinal) && text[0] != '[') ? null : new DnsEndPoint(host, port);
    }
}
