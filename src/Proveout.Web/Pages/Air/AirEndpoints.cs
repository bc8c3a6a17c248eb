using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Air;

/// <summary>The air in the bays of a machine: heat, fans, temperatures.</summary>
internal static class AirEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/air", (string machineId, IDesignDesk desk) =>
        desk.Air(machineId) is { } view ? PageResult.Of<AirPage>(view) : TroubleEndpoints.Missing("There is no such machine."));
}
