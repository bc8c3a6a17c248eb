using Microsoft.AspNetCore.Http;

namespace Proveout.Web.Hosting;

/// <summary>Headers that every answer carries: own stylesheet and script only, no frames, no guessing of types.</summary>
internal sealed class SecurityHeaders(RequestDelegate next)
{
    private const string Policy =
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    // A drawing opened alone brings its own styles, and can do nothing else.
    private const string DrawingPolicy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; frame-ancestors 'none'";

    // The sound of a belt is heard by the microphone; nothing else of a device is used.
    private const string Devices = "microphone=(self), camera=(), geolocation=(), payment=(), usb=(), serial=(), midi=(), display-capture=(), screen-wake-lock=(self)";

    public Task InvokeAsync(HttpContext context)
    {
        context.Response.OnStarting(AddAsync, context);
        return next(context);
    }

    private static Task AddAsync(object state)
    {
        var context = (HttpContext)state;
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = headers.ContentType.ToString().StartsWith("image/svg+xml", StringComparison.Ordinal) ? DrawingPolicy : Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Permissions-Policy"] = Devices;
        // A browser heeds it only after a certificate that it trusts (RFC 6797, 8.1).
        if (context.Request.IsHttps)
            headers.StrictTransportSecurity = "max-age=31536000";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        // Pages are asked for anew each time, yet may be kept for "back", so that what was typed in a form is still there.
        if (ShownOnce.Is(context))
            headers.CacheControl = "no-store";
        else if (!headers.CacheControl.ToString().Contains("immutable", StringComparison.Ordinal))
            headers.CacheControl = "private, no-cache";
        headers.Remove("Pragma");
        return Task.CompletedTask;
    }
}
