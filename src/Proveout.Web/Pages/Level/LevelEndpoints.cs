using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Level;

/// <summary>Levelling of a plate from probed heights.</summary>
internal static class LevelEndpoints
{
    public const string Form = "level";
    public const string Heights = "heights";
    public const string Later = "later";
    public const string Repeats = "repeats";
    public const string Supports = "supports";
    public const string Leave = "leave";
    public const string Clockwise = "clockwise";
    public const string Lowers = "lowers";
    public const string Bend = "bend";
    public const string May = "may";

    private static readonly Dictionary<string, string> Nothing = [];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk)
    {
        routes.MapGet(Addresses.Level, async (HttpContext context, IBench bench) => Page(Nothing, await bench.BuildsAsync(context.RequestAborted), context, null, null, null));
        routes.MapPost(Addresses.Level, (HttpContext context, IBench bench) => AnswerAsync(context, bench, desk));
    }

    private static async Task<IResult> AnswerAsync(HttpContext context, IBench bench, IMeasuringDesk desk)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var typed = MeasureForm.Typed(form, [.. LevelFields.All.Select(field => field.Name), Heights, Later, Repeats, Supports, Leave, Clockwise, Bend]);
        if (form.Problems.Count > 0)
            return Page(typed, builds, context, null, null, form.Refuse(form.Problems));
        var map = await MeasureForm.TextAsync(form, Heights, context.RequestAborted);
        var repeats = await MeasureForm.TextAsync(form, Repeats, context.RequestAborted);
        var later = await MeasureForm.TextAsync(form, Later, context.RequestAborted);
        var answer = LevelSheet.Of(new LevelRequest(
            map, later, typed[Supports], repeats, typed[Leave], typed[Clockwise] == Lowers, typed[Bend] == May, typed));
        if (answer.Value is not { } sheet)
            return Page(typed, builds, context, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(
            form, keep => Measurements.Of(Form, sheet, keep), [.. new[] { map, later, repeats }.OfType<NamedText>().Select(Measurements.FileOf)], typed, builds, desk, context.RequestAborted);
        return Page(typed, builds, context, sheet, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static IResult Page(IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, SheetView? sheet, BuildSummary? kept, Refusal? refusal) =>
        PageResult.Of<LevelPage>(
            new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), sheet, kept, refusal),
            refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
