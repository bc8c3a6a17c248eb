using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Budget;

/// <summary>The error budget to the nozzle.</summary>
internal static class BudgetEndpoints
{
    public const string Form = "budget";

    private static readonly Dictionary<string, string> Nothing = [];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk)
    {
        routes.MapGet(Addresses.Budget, async (HttpContext context, IBench bench) => Page(Nothing, await bench.BuildsAsync(context.RequestAborted), context, null, null, null));
        routes.MapPost(Addresses.Budget, (HttpContext context, IBench bench) => AnswerAsync(context, bench, desk));
    }

    private static async Task<IResult> AnswerAsync(HttpContext context, IBench bench, IMeasuringDesk desk)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var typed = MeasureForm.Typed(form, BudgetFields.All.Select(field => field.Name));
        if (form.Problems.Count > 0)
            return Page(typed, builds, context, null, null, form.Refuse(form.Problems));
        var answer = BudgetSheet.Of(typed);
        if (answer.Value is not { } sheet)
            return Page(typed, builds, context, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(form, keep => Measurements.Of(Form, sheet, keep), [], typed, builds, desk, context.RequestAborted);
        return Page(typed, builds, context, sheet, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static IResult Page(IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, SheetView? sheet, BuildSummary? kept, Refusal? refusal) =>
        PageResult.Of<BudgetPage>(
            new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), sheet, kept, refusal),
            refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
