using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Energise;

/// <summary>The order in which a machine is energised for the first time.</summary>
internal static class EnergiseEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/energise", Show);

    private static IResult Show(string machineId, IBench bench) =>
        bench.Energising(machineId) is { } view ? PageResult.Of<EnergisePage>(view) : TroubleEndpoints.Missing("There is no such machine.");
}
