using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Belts;

/// <summary>Belts of a machine, drawn with the axes where the address says, with what explains what the address says is seen.</summary>
internal static class BeltsEndpoints
{
    public const string Form = "belts-keep";

    private const int MostFields = 200;

    private static readonly Dictionary<string, string> Nothing = [];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk? measuring)
    {
        routes.MapGet("/machines/{machineId}/belts", async (string machineId, HttpContext context, IDesignDesk desk, IBench bench) =>
            desk.Belts(machineId, Asked(context.Request)) is { } view
                ? Page(view, new MeasurePageView(Nothing, await MeasureForm.BuildsAsync(context, bench, measuring), PersonCookie.Read(context, ""), null, null, null))
                : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapGet("/machines/{machineId}/belts/{plane}/{axis}.svg", (string machineId, string plane, string axis, IDesignDesk desk) =>
            desk.BeltFilm(machineId, plane, axis) is { } film ? TypedResults.Text(film, "image/svg+xml") : TroubleEndpoints.Missing("There is no such film."));
        if (measuring is not null)
            routes.MapPost("/machines/{machineId}/belts", (string machineId, HttpContext context, IDesignDesk desk, IBench bench) => KeepAsync(machineId, context, desk, bench, measuring));
    }

    private static async Task<IResult> KeepAsync(string machineId, HttpContext context, IDesignDesk desk, IBench bench, IMeasuringDesk measuring)
    {
        if (desk.Belts(machineId, Asked(context.Request)) is not { Belts: { } belts } view)
            return TroubleEndpoints.Missing("There is no such machine, or it has no belts.");
        var form = await PostedForm.ReadAsync(context);
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var typed = MeasureForm.Typed(form);
        var seen = view.Seen is { IsAsked: true } asked ? asked : null;
        var kept = form.Problems.Count > 0 ? null : await MeasureForm.KeepAsync(form, keep => Measurements.Of(belts, seen, keep), [], typed, builds, measuring, context.RequestAborted);
        var refusal = form.Problems.Count > 0 ? form.Refuse(form.Problems)
            : kept is null ? form.Refuse(["Nothing was kept. Choose the build in whose record it belongs."])
            : kept.Value is null ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)])
            : null;
        return Page(view, new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), null, kept?.Value, refusal));
    }

    private static IResult Page(BeltsPageView view, MeasurePageView keep) =>
        PageResult.Of<BeltsPage>(new BeltsPagePair(view, keep), keep.Refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    // What is no number leaves its axis in the middle and its question open: the page says where each axis stands and what was said.
    private static Dictionary<string, double> Asked(HttpRequest request) =>
        MeasureForm.Seen(request.Query.Take(MostFields).Select(item => new KeyValuePair<string, string>(item.Key, item.Value.ToString())));
}
