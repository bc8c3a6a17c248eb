using Microsoft.AspNetCore.Http;
using Proveout.Workshop;

namespace Proveout.Web.Access;

/// <summary>The cookie that a signed-in device shows. It holds a random token and nothing else.</summary>
internal static class SessionCookie
{
    // The prefix holds the browser to it: only over TLS, only for this host, the whole of it (RFC 6265bis, 4.1.3.2).
    private const string OverTls = "__Host-session";
    private const string Plain = "session";

    public static string? Read(HttpContext context) => context.Request.Cookies[NameFor(context)];

    public static void Write(HttpContext context, string token) => context.Response.Cookies.Append(NameFor(context), token, Options(context));

    public static void Remove(HttpContext context) => context.Response.Cookies.Delete(NameFor(context), Options(context));

    private static string NameFor(HttpContext context) => context.Request.IsHttps ? OverTls : Plain;

    private static CookieOptions Options(HttpContext context) => new()
    {
        HttpOnly = true,
        Secure = context.Request.IsHttps,
        SameSite = SameSiteMode.Strict,
        Path = "/",
        MaxAge = SessionTimes.Whole,
    };
}
