using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Walk;

/// <summary>The walk round a machine.</summary>
internal static class WalkEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/walk", Show);

    private static IResult Show(string machineId, IBench bench) =>
        bench.Walk(machineId) is { } view ? PageResult.Of<WalkPage>(view) : TroubleEndpoints.Missing("There is no such machine.");
}
