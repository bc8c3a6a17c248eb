using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Proveout.Web.Access;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Hosting.Watching;

/// <summary>Tells what was counted and measured, to a program on this computer only.</summary>
internal static class MetricsEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        // Made here, and not when first asked, so that it hears everything from the start.
        if (routes.ServiceProvider.GetService<MeterBook>() is { } book)
            routes.MapGet(Addresses.Metrics, (HttpContext context) => IsHere(context.Connection.RemoteIpAddress)
                ? TypedResults.Text(OpenMetricsText.Of(book.Read()), OpenMetricsText.ContentType)
                : TroubleEndpoints.Missing()).Needs(Permission.Open);
    }

    private static bool IsHere(IPAddress? asker) => asker is not null && IPAddress.IsLoopback(asker);
}
