using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Builds;

/// <summary>All builds of a machine, side by side.</summary>
internal static class BuildsEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/builds", ShowAsync);

    /// <summary>Which part of many builds an address asks for.</summary>
    public static BuildsQuery QueryOf(HttpRequest request) => new(
        request.Query["find"].ToString(), Number(request.Query["page"]), request.Query["check"].ToString(), Number(request.Query["checks"]));

    private static async Task<IResult> ShowAsync(string machineId, HttpContext context, IBuildsDesk desk)
    {
        var query = QueryOf(context.Request);
        return await desk.OfMachineAsync(machineId, query, context.RequestAborted) is { } view
            ? PageResult.Of<BuildsPage>(new BuildsPageView(view, query))
            : TroubleEndpoints.Missing("There is no such machine.");
    }

    private static int Number(string? text) => int.TryParse(text, out var number) ? number : 1;
}
