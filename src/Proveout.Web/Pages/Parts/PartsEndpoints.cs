using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Parts;

/// <summary>The parcel: what came of each part.</summary>
internal static class PartsEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/builds/{buildId}/parts", ShowAsync);
        routes.MapPost("/builds/{buildId}/parts", EnterAsync);
    }

    private static async Task<IResult> ShowAsync(string buildId, HttpContext context, IBench bench, IReceivingDesk desk) =>
        await ViewAsync(buildId, context, bench, desk) is { } view ? PageResult.Of<PartsPage>(view) : TroubleEndpoints.Missing("There is no such build.");

    private static async Task<IResult> EnterAsync(string buildId, HttpContext context, IBench bench, IReceivingDesk desk)
    {
        if (await ViewAsync(buildId, context, bench, desk) is not { } view)
            return TroubleEndpoints.Missing("There is no such build.");
        var form = await PostedForm.ReadAsync(context);
        var person = form.Person(view.Person);
        var problems = form.Problems;
        if (problems.Count == 0)
        {
            var request = new ArrivalRequest(form.Name, form.Text("came"), form.Text("note"), person, form.Key);
            problems = [.. (await desk.NoteAsync(buildId, request, context.RequestAborted)).Diagnostics.Select(Refusal.Sentence)];
        }

        return FormAnswer.Of<PartsPage>(context, form, problems, refusal => view with { Refusal = refusal }, person, $"{view.Address}#part-{form.Name}");
    }

    private static async Task<PartsView?> ViewAsync(string buildId, HttpContext context, IBench bench, IReceivingDesk desk) =>
        await bench.StateAsync(buildId, context.RequestAborted) is { } state && await desk.PartsAsync(buildId, context.RequestAborted) is { } parts
            ? new PartsView(state, parts, PersonCookie.Read(context, state.Build.Builder), null)
            : null;
}
