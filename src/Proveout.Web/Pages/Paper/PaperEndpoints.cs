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
        paper.MapGet("", Show);
        paper.MapGet("/{name}", (string machineId, string name, HttpRequest request, IDesignDesk desk) =>
            desk.PaperFile(machineId, name, $"{request.Scheme}://{request.Host}{Addresses.Machine(machineId)}") is { } file
                ? FileResult.Of(file)
                : TroubleEndpoints.Missing("There is no such file."));
    }

    private static IResult Show(string machineId, string? list, IDesignDesk desk) =>
        desk.Paper(machineId) is not { } view ? TroubleEndpoints.Missing("There is no such machine.")
        : list is null ? PageResult.Of<PaperPage>(view)
        : view.Tables.Any(table => table.Id == list) ? PageResult.Of<PaperListPage>(view with { Tables = [.. view.Tables.Where(table => table.Id == list)] })
        : TroubleEndpoints.Missing("There is no such list.");
}
