using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Ask;

/// <summary>From what a person sees to suspects. The answers stand in the address, so that it can be shared under a question.</summary>
internal static class AskEndpoints
{
    private const int MostAnswers = 200;

    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/ask", Show);

    private static IResult Show(string machineId, HttpRequest request, IBench bench)
    {
        var answers = request.Query
            .Where(item => item.Value is ["bad"] or ["good"])
            .Take(MostAnswers)
            .ToDictionary(item => item.Key, item => item.Value == "bad", StringComparer.Ordinal);
        if (bench.Ask(machineId, answers) is not { } view)
            return TroubleEndpoints.Missing("There is no such machine.");
        var said = request.Query["say"].ToString().Trim();
        var proposed = said.Length == 0 ? [] : SymptomMatch.Of(said, view.Groups.SelectMany(group => group.Symptoms).Select(symptom => symptom.Check));
        return PageResult.Of<AskPage>(new AskPageView(view, said, proposed));
    }
}
