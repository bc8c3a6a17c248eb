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

    private static async Task<IResult> ShowAsync(string buildId, string checkId, HttpContext context, IBench bench, IBuildsDesk builds, MeterAtHand meter) =>
        await ViewAsync(buildId, checkId, context, bench, builds, meter) is { } view
            ? PageResult.Of<CheckPage>(view)
            : TroubleEndpoints.Missing("There is no such check in this build.");

    private static async Task<IResult> EnterAsync(string buildId, string checkId, HttpContext context, IBench bench, IBuildsDesk builds, MeterAtHand meter)
    {
        if (await ViewAsync(buildId, checkId, context, bench, builds, meter) is not { } view)
            return TroubleEndpoints.Missing("There is no such check in this build.");
        var form = await PostedForm.ReadAsync(context);
        if (form.Name == "take" && form.Problems.Count == 0)
            return await TakeAsync(view, form, meter, context.RequestAborted);
        var forms = new CheckForms(bench, builds, view, form, context.RequestAborted);
        var problems = await forms.EnterAsync();
        return FormAnswer.Of<CheckPage>(context, form, problems, refusal => view with { Refusal = refusal }, view.Person, forms.NextAddress);
    }

    // Fills the field and enters nothing: the person looks at the meter and enters it.
    private static async Task<IResult> TakeAsync(CheckView view, PostedForm form, MeterAtHand meter, CancellationToken cancellation)
    {
        var taken = await meter.ReadAsync(view.Step.Check.Kind, cancellation);
        return taken.Value is { } reading
            ? PageResult.Of<CheckPage>(view with { Taken = reading })
            : PageResult.Of<CheckPage>(view with { Refusal = form.Refuse([.. taken.Diagnostics.Select(Refusal.Sentence)]) }, StatusCodes.Status422UnprocessableEntity);
    }

    private static async Task<CheckView?> ViewAsync(string buildId, string checkId, HttpContext context, IBench bench, IBuildsDesk builds, MeterAtHand meter)
    {
        var state = await bench.StateAsync(buildId, context.RequestAborted);
        if (state is null || (state.FindStep(checkId) ?? await bench.StepAsync(buildId, checkId, context.RequestAborted)) is not { } step)
            return null;
        var drawing = await bench.ProbeDrawingAsync(buildId, checkId, context.RequestAborted);
        return new CheckView(state, step, InlineDrawing.From(drawing), PersonCookie.Read(context, state.Build.Builder), null)
        {
            HasMeter = meter.CanRead(step.Check.Kind),
            Hints = await builds.HintsAsync(buildId, checkId, context.RequestAborted),
        };
    }
}
