using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Http;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>Where a request is from, as far as tries are counted by it.</summary>
internal static class CallerAddress
{
    private const int NetworkBytes = 8;

    public static Caller Of(HttpContext context)
    {
        var address = context.Connection.RemoteIpAddress is { IsIPv4MappedToIPv6: true } mapped ? mapped.MapToIPv4() : context.Connection.RemoteIpAddress;
        var isSmall = context.Request.Headers.UserAgent.ToString().Contains("Mobi", StringComparison.Ordinal);
        return new Caller(CountedBy(address), $"{(isSmall ? "phone" : "computer")} at {address?.ToString() ?? "an unknown address"}");
    }

    // A household has a whole /64 of IPv6 addresses to call from (RFC 6177, RFC 4291, 2.5.4).
    private static string CountedBy(IPAddress? address) => address switch
    {
        null => "",
        { AddressFamily: AddressFamily.InterNetworkV6 } => Convert.ToHexString(address.GetAddressBytes().AsSpan(0, NetworkBytes)),
        _ => address.ToString(),
    };
}
