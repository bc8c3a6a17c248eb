using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Review;

/// <summary>What the review of a design finds.</summary>
internal static class ReviewEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/review", (string machineId, IDesignDesk desk) =>
        desk.Review(machineId) is { } view ? PageResult.Of<ReviewPage>(view) : TroubleEndpoints.Missing("There is no such machine."));
}
