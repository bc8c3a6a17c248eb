using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Plan;

/// <summary>The check plan of a machine and what it covers; what it does against three mistakes made together.</summary>
internal static class PlanEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/machines/{machineId}/plan", Show);
        routes.MapGet("/machines/{machineId}/plan/threes", ShowThrees);
    }

    private static IResult Show(string machineId, IBench bench) =>
        bench.Plan(machineId) is { } plan ? PageResult.Of<PlanPage>(plan) : TroubleEndpoints.Missing("There is no such machine.");

    private static IResult ShowThrees(string machineId, IBench bench) =>
        bench.Threes(machineId) is not { } threes ? TroubleEndpoints.Missing("There is no such machine.")
        : threes.Value is { } view ? PageResult.Of<ThreesPage>(view)
        : TroubleEndpoints.TooMuch(threes.Diagnostics[0]);
}
