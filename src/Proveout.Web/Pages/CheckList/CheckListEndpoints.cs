using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.CheckList;

/// <summary>Every check of a build with what has become of it.</summary>
internal static class CheckListEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/builds/{buildId}/checks", ShowAsync);

    private static async Task<IResult> ShowAsync(string buildId, IBench bench, CancellationToken cancellation) =>
        await bench.StateAsync(buildId, cancellation) is { } state
            ? PageResult.Of<CheckListPage>(state)
            : TroubleEndpoints.Missing("There is no such build.");
}
