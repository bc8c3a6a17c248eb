using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Motor;

/// <summary>What follows for an axis from its motor. The figures stand in the address, so that it can be passed on; to keep them in a record is a form of its own.</summary>
internal static class MotorEndpoints
{
    public const string Form = "motor";

    private const int LongestText = 40;

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk? desk)
    {
        routes.MapGet(Addresses.Motor, async (HttpContext context, IBench bench) =>
        {
            var typed = MotorFields.All.Where(field => context.Request.Query.ContainsKey(field.Name)).ToDictionary(field => field.Name, field => Shortened(context.Request.Query[field.Name].ToString()), StringComparer.Ordinal);
            return Page(typed, await MeasureForm.BuildsAsync(context, bench, desk), context, typed.Count == 0 ? null : MotorSheet.Of(typed), null, null);
        });
        routes.MapPost(Addresses.Motor, (HttpContext context, IBench bench) => KeepAsync(context, bench, desk));
    }

    private static async Task<IResult> KeepAsync(HttpContext context, IBench bench, IMeasuringDesk? desk)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await MeasureForm.BuildsAsync(context, bench, desk);
        var typed = MeasureForm.Typed(form, MotorFields.All.Select(field => field.Name));
        var answer = MotorSheet.Of(typed);
        if (form.Problems.Count > 0)
            return Page(typed, builds, context, answer, null, form.Refuse(form.Problems));
        if (answer.Value is not { } sheet)
            return Page(typed, builds, context, answer, null, null);
        var kept = await MeasureForm.KeepAsync(form, keep => Measurements.Of(sheet, keep), [], typed, builds, desk, context.RequestAborted);
        return Page(typed, builds, context, answer, kept?.Value, kept switch
        {
            null => form.Refuse(["Nothing was kept. Choose the build in whose record it belongs."]),
            { Value: null } => form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]),
            _ => null,
        });
    }

    private static IResult Page(
        IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, Outcome<MotorView>? answer, BuildSummary? kept, Refusal? refusal) =>
        PageResult.Of<MotorPage>(
            new MotorPageView(
                new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), null, kept, refusal),
                answer?.Value,
                [.. (answer?.Diagnostics ?? []).Select(diagnostic => diagnostic.ToString())]),
            refusal is null && (answer is null or { Value: not null }) ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static string Shortened(string text) => text.Length <= LongestText ? text : text[..LongestText];
}
