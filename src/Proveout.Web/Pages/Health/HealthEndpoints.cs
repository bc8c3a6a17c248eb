using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Logging;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Health;

/// <summary>Whether the bench is alive and can take what is entered: for a person, and for a program that watches.</summary>
internal static partial class HealthEndpoints
{
    public static void Map(IEndpointRouteBuilder routes, IHealthDesk desk)
    {
        routes.MapGet(Addresses.Health, async (CancellationToken cancellation) => PageResult.Of<HealthPage>(await desk.LookAsync(cancellation)));
        // Alive: it answers at all. A journal that is away does not come back by starting the bench anew.
        routes.MapGet(Addresses.HealthLive, () => TypedResults.Text("alive\n")).Needs(Permission.Open);
        routes.MapGet(Addresses.HealthReady, (HttpContext context, ILoggerFactory logs) => TellAsync(context, desk, logs.CreateLogger("Proveout.Health"))).Needs(Permission.Open);
    }

    private static async Task<IResult> TellAsync(HttpContext context, IHealthDesk desk, ILogger log)
    {
        var health = await desk.LookAsync(context.RequestAborted);
        foreach (var finding in health.Findings.Where(finding => !finding.IsGood))
            NotReady(log, finding.Name, finding.Sentence);
        return TypedResults.Text(
            HealthText.Write(health) + "\n",
            "application/json",
            statusCode: health.IsReady ? StatusCodes.Status200OK : StatusCodes.Status503ServiceUnavailable);
    }

    [LoggerMessage(EventId = 20, EventName = "NotReady", Level = LogLevel.Warning, Message = "Not ready, {Finding}: {Sentence}")]
    private static partial void NotReady(ILogger log, string finding, string sentence);
}
