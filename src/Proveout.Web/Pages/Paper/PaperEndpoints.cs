using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Paper;

/// <summary>What to work from on paper: schedules and labels.</summary>
internal static class PaperEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        var paper = routes.MapGroup("/machines/{machineId}/paper");
        paper.MapGet("", (string machineId, IDesignDesk desk) =>
            desk.Paper(machineId) is { } view ? PageResult.Of<PaperPage>(view) : TroubleEndpoints.Missing("There is no such machine."));
        paper.MapGet("/{name}", (string machineId, string name, HttpRequest request, IDesignDesk desk) =>
            desk.PaperFile(machineId, name, $"{request.Scheme}://{request.Host}{Addresses.Machine(machineId)}") is { } file
                ? FileResult.Of(file)
                : TroubleEndpoints.Missing("There is no such file."));
    }
}
