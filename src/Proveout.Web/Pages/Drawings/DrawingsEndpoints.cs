using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Drawings;

/// <summary>The drawings of a machine.</summary>
internal static class DrawingsEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/machines/{machineId}/drawings", (string machineId, IDesignDesk desk) =>
            desk.Drawings(machineId) is { } view ? PageResult.Of<DrawingsPage>(view) : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapGet("/machines/{machineId}/drawings/{name}.svg", (string machineId, string name, IDesignDesk desk) => Send(desk.Drawing(machineId, name)));
        routes.MapGet("/machines/{machineId}/wires/{conductor}/{sheet:int}.svg", (string machineId, string conductor, int sheet, IDesignDesk desk) =>
            Send(desk.WireDrawings(machineId, conductor).ElementAtOrDefault(sheet - 1)));
    }

    private static IResult Send(string? svg) => svg is null ? TroubleEndpoints.Missing("There is no such drawing.") : TypedResults.Text(svg, "image/svg+xml");
}
