using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Measure;

/// <summary>A page with a form of measurements: the answer comes with the form, all that was typed comes back, and it is kept where a build is chosen.</summary>
/// <param name="desk">Keeps results; null where nothing can be kept.</param>
internal sealed class MeasuringPage<TAnswer>(IMeasuringDesk? desk)
    where TAnswer : class
{
    private static readonly Dictionary<string, string> Nothing = [];

    /// <summary>Fields whose text comes back.</summary>
    public required IReadOnlyList<string> Fields { get; init; }

    /// <summary>What follows from the form and what was typed into it.</summary>
    public required Func<PostedForm, IReadOnlyDictionary<string, string>, CancellationToken, Task<Judged<TAnswer>>> Judge { get; init; }

    /// <summary>What of an answer goes into a record.</summary>
    public required Func<TAnswer, KeepRequest, MeasurementRequest> Record { get; init; }

    /// <summary>The page, with an answer or without.</summary>
    public required Func<MeasurePageView, TAnswer?, IResult> Show { get; init; }

    /// <summary>Shows the empty form at an address, and answers it there.</summary>
    public void Map(IEndpointRouteBuilder routes, string address)
    {
        routes.MapGet(address, (HttpContext context, IBench bench) => BlankAsync(context, bench));
        routes.MapPost(address, (HttpContext context, IBench bench) => AnswerAsync(context, bench));
    }

    /// <summary>The form before anything was sent.</summary>
    /// <param name="context">The request.</param>
    /// <param name="bench">Knows the builds.</param>
    /// <param name="typed">What the address fills in; nothing when left out.</param>
    public async Task<IResult> BlankAsync(HttpContext context, IBench bench, IReadOnlyDictionary<string, string>? typed = null) =>
        Page(context, typed ?? Nothing, await MeasureForm.BuildsAsync(context, bench, desk), null, null, null);

    /// <summary>The form with its answer, or with why there is none.</summary>
    public async Task<IResult> AnswerAsync(HttpContext context, IBench bench)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await MeasureForm.BuildsAsync(context, bench, desk);
        var typed = MeasureForm.Typed(form, Fields);
        if (form.Problems.Count > 0)
            return Page(context, typed, builds, null, null, form.Refuse(form.Problems));
        var (answer, files) = await Judge(form, typed, context.RequestAborted);
        if (answer.Value is not { } found)
            return Page(context, typed, builds, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(form, keep => Record(found, keep), files, typed, builds, desk, context.RequestAborted);
        return Page(context, typed, builds, found, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private IResult Page(
        HttpContext context, IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, TAnswer? answer, BuildSummary? kept, Refusal? refusal) =>
        Show(new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), answer as SheetView, kept, refusal), answer);
}
