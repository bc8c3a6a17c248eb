using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Check;

/// <summary>One check of a build: shows it, takes what is entered.</summary>
internal static class CheckEndpoints
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/builds/{buildId}", GoToCurrentAsync);
        routes.MapGet("/builds/{buildId}/checks/{checkId}", ShowAsync);
        routes.MapPost("/builds/{buildId}/checks/{checkId}", EnterAsync);
    }

    private static async Task<IResult> GoToCurrentAsync(string buildId, IBench bench, CancellationToken cancellation)
    {
        var state = await bench.StateAsync(buildId, cancellation);
        if (state is null)
            return TroubleEndpoints.Missing("There is no such build.");
        return new SeeOther(state.CurrentCheckId is { } checkId ? Addresses.Check(buildId, checkId) : Addresses.Record(buildId));
    }

    private static async Task<IResult> ShowAsync(string buildId, string checkId, HttpContext context, IBench bench, IBuildsDesk builds) =>
        await ViewAsync(buildId, checkId, context, bench, builds) is { } view
            ? PageResult.Of<CheckPage>(view)
            : TroubleEndpoints.Missing("There is no such check in this build.");

    private static async Task<IResult> EnterAsync(string buildId, string checkId, HttpContext context, IBench bench, IBuildsDesk builds)
    {
        if (await ViewAsync(buildId, checkId, context, bench, builds) is not { } view)
            return TroubleEndpoints.Missing("There is no such check in this build.");
        var form = await PostedForm.ReadAsync(context);
        var forms = new CheckForms(bench, builds, view, form, context.RequestAborted);
        var problems = await forms.EnterAsync();
        return FormAnswer.Of<CheckPage>(context, form, problems, refusal => view with { Refusal = refusal }, view.Person, forms.NextAddress);
    }

    private static async Task<CheckView?> ViewAsync(string buildId, string checkId, HttpContext context, IBench bench, IBuildsDesk builds)
    {
        var state = await bench.StateAsync(buildId, context.RequestAborted);
        if (state is null || (state.FindStep(checkId) ?? await bench.StepAsync(buildId, checkId, context.RequestAborted)) is not { } step)
            return null;
        var drawing = await bench.ProbeDrawingAsync(buildId, checkId, context.RequestAborted);
        return new CheckView(state, step, InlineDrawing.From(drawing), PersonCookie.Read(context, state.Build.Builder), null)
        {
            Hints = await builds.HintsAsync(buildId, checkId, context.RequestAborted),
        };
    }
}
