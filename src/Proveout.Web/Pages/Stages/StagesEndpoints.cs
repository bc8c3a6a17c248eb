using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Stages;

/// <summary>What is left for later, and what to check again after it is fitted.</summary>
internal static class StagesEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/stages", (string machineId, IDesignDesk desk) =>
        desk.Stages(machineId) is { } view ? PageResult.Of<StagesPage>(view) : TroubleEndpoints.Missing("There is no such machine."));
}
