using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Frame;

/// <summary>Squareness, twist, racking and rails of a frame.</summary>
internal static class FrameEndpoints
{
    public const string Form = "frame";
    public const string Rail = "rail";
    public const string Points = "points";
    public const string Distances = "distances";

    private static readonly Dictionary<string, string> Nothing = [];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk)
    {
        routes.MapGet(Addresses.Frame, async (HttpContext context, IBench bench) => Page(Nothing, await bench.BuildsAsync(context.RequestAborted), context, null, null, null));
        routes.MapPost(Addresses.Frame, (HttpContext context, IBench bench) => AnswerAsync(context, bench, desk));
    }

    private static async Task<IResult> AnswerAsync(HttpContext context, IBench bench, IMeasuringDesk desk)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var typed = MeasureForm.Typed(form, [.. FrameFields.All.Select(field => field.Name), Rail, Points, Distances, .. FrameSeen.Ids]);
        if (form.Problems.Count > 0)
            return Page(typed, builds, context, null, null, form.Refuse(form.Problems));
        var rail = await MeasureForm.TextAsync(form, Rail, context.RequestAborted);
        var points = await MeasureForm.TextAsync(form, Points, context.RequestAborted);
        var distances = await MeasureForm.TextAsync(form, Distances, context.RequestAborted);
        var answer = FrameSheet.Of(new FrameRequest(typed, rail) { Points = points, Distances = distances, Seen = MeasureForm.Seen(typed.Where(pair => FrameSeen.Ids.Contains(pair.Key))) });
        if (answer.Value is not { } sheet)
            return Page(typed, builds, context, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(
            form, keep => Measurements.Of(Form, sheet, keep), [.. new[] { rail, points, distances }.OfType<NamedText>().Select(Measurements.FileOf)], typed, builds, desk, context.RequestAborted);
        return Page(typed, builds, context, sheet, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static IResult Page(IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, SheetView? sheet, BuildSummary? kept, Refusal? refusal) =>
        PageResult.Of<FramePage>(
            new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), sheet, kept, refusal),
            refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
