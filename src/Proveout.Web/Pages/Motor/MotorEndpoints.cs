using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Motor;

/// <summary>What follows for an axis from its motor. The figures stand in the address, so that it can be passed on.</summary>
internal static class MotorEndpoints
{
    private const int LongestText = 40;

    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet(Addresses.Motor, Show);

    private static IResult Show(HttpRequest request)
    {
        var typed = MotorFields.All.Where(field => request.Query.ContainsKey(field.Name)).ToDictionary(field => field.Name, field => Shortened(request.Query[field.Name].ToString()), StringComparer.Ordinal);
        if (typed.Count == 0)
            return PageResult.Of<MotorPage>(new MotorPageView(typed, null, []));
        var answer = MotorSheet.Of(typed);
        return answer.Value is { } sheet
            ? PageResult.Of<MotorPage>(new MotorPageView(typed, sheet, []))
            : PageResult.Of<MotorPage>(new MotorPageView(typed, null, [.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]), StatusCodes.Status422UnprocessableEntity);
    }

    private static string Shortened(string text) => text.Length <= LongestText ? text : text[..LongestText];
}
