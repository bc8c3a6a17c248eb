using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Proveout.Workshop;

namespace Proveout.Web.Hosting.Watching;

/// <summary>Logs when the bench begins and ends to serve.</summary>
internal static partial class LifeLog
{
    public static void Watch(WebApplication app)
    {
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger("Proveout.Server");
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            var addresses = string.Join(" ", app.Urls);
            Started(log, ProgramVersion.Number, addresses);
        });
        app.Lifetime.ApplicationStopping.Register(() => Stopping(log));
        app.Lifetime.ApplicationStopped.Register(() => Stopped(log));
    }

    [LoggerMessage(EventId = 1, EventName = "Started", Level = LogLevel.Information, Message = "Proveout {Version} serves at {Address}")]
    private static partial void Started(ILogger log, string version, string address);

    [LoggerMessage(EventId = 2, EventName = "Stopping", Level = LogLevel.Information, Message = "Told to stop: requests under way are answered, event streams end")]
    private static partial void Stopping(ILogger log);

    [LoggerMessage(EventId = 3, EventName = "Stopped", Level = LogLevel.Information, Message = "Stopped")]
    private static partial void Stopped(ILogger log);
}
