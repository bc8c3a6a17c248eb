using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Heat;

/// <summary>What a machine heats: sensors, first warm-up, guard.</summary>
internal static class HeatEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/heat", (string machineId, IDesignDesk desk) =>
        desk.Heat(machineId) is { } view ? PageResult.Of<HeatPage>(view) : TroubleEndpoints.Missing("There is no such machine."));
}
