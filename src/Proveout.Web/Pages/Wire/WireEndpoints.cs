using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Wire;

/// <summary>One conductor from end to end: where the code on its label leads.</summary>
internal static class WireEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/wires/{conductor}", (string machineId, string conductor, IDesignDesk desk) =>
        desk.Wire(machineId, conductor) is { } view ? PageResult.Of<WirePage>(view) : TroubleEndpoints.Missing("There is no such wire."));
}
