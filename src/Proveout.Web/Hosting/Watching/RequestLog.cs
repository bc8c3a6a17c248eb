using System.Diagnostics;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Logging;

namespace Proveout.Web.Hosting.Watching;

/// <summary>Logs each request by its kind of page, not by its address: an address holds a build, and a query may hold a code.</summary>
/// <param name="next">Answers.</param>
/// <param name="log">Takes the line.</param>
internal sealed partial class RequestLog(RequestDelegate next, ILogger<RequestLog> log)
{
    public async Task InvokeAsync(HttpContext context)
    {
        var start = Stopwatch.GetTimestamp();
        try
        {
            await next(context);
        }
        finally
        {
            if (log.IsEnabled(LogLevel.Information))
                Tell(context, Stopwatch.GetElapsedTime(start));
        }
    }

    private void Tell(HttpContext context, TimeSpan took)
    {
        var (method, route, milliseconds) = (MethodOf(context), RouteOf(context), Math.Round(took.TotalMilliseconds, 1));
        // Asked every few seconds by whoever watches: worth a line only when the answer is bad.
        if (context.Response.StatusCode >= StatusCodes.Status400BadRequest || route is not (Addresses.HealthLive or Addresses.HealthReady or Addresses.Metrics))
            Answered(log, method, route, context.Response.StatusCode, milliseconds);
    }

    private static string RouteOf(HttpContext context) =>
        ((context.Features.Get<IExceptionHandlerFeature>()?.Endpoint ?? context.GetEndpoint()) as RouteEndpoint)?.RoutePattern.RawText ?? "none";

    // A method is any word that a stranger likes.
    private static string MethodOf(HttpContext context) =>
        new[] { HttpMethods.Get, HttpMethods.Head, HttpMethods.Post }.FirstOrDefault(known => HttpMethods.Equals(known, context.Request.Method)) ?? "other";

    [LoggerMessage(EventId = 10, EventName = "Answered", Level = LogLevel.Information, Message = "{Method} {Route}: {Status} after {Milliseconds} ms")]
    private static partial void Answered(ILogger log, string method, string route, int status, double milliseconds);
}
