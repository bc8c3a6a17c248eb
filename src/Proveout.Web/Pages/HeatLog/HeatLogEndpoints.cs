using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.HeatLog;

/// <summary>A log of a heater, held against what the machine file predicts.</summary>
internal static class HeatLogEndpoints
{
    public const string Form = "heat-log";
    public const string Log = "log";
    public const string Before = "before";
    public const string Body = "body";
    public const string Sensor = "sensor";
    public const string Output = "output";

    private static readonly Dictionary<string, string> Nothing = [];

    private static readonly string[] Fields = [.. HeatLogFields.All.Select(field => field.Name), Log, Before, Body, Sensor, Output];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk measuring)
    {
        routes.MapGet("/machines/{machineId}/heat/log", async (HttpContext context, string machineId, IBench bench, IDesignDesk designs) =>
            designs.Heat(machineId) is { } heat ? Page(heat, Nothing, await bench.BuildsAsync(context.RequestAborted), context, null, null, null) : Missing());
        routes.MapPost("/machines/{machineId}/heat/log", (HttpContext context, string machineId, IBench bench, IDesignDesk designs) => AnswerAsync(context, machineId, bench, designs, measuring));
    }

    private static async Task<IResult> AnswerAsync(HttpContext context, string machineId, IBench bench, IDesignDesk designs, IMeasuringDesk measuring)
    {
        if (designs.Heat(machineId) is not { } heat)
            return Missing();
        var form = await PostedForm.ReadAsync(context);
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var typed = MeasureForm.Typed(form, Fields);
        if (form.Problems.Count > 0)
            return Page(heat, typed, builds, context, null, null, form.Refuse(form.Problems));
        var log = await MeasureForm.TextAsync(form, Log, context.RequestAborted);
        if (log is null)
            return Page(heat, typed, builds, context, null, null, form.Refuse(["There is no log. Choose a file, or paste its rows."]));
        var before = await MeasureForm.TextAsync(form, Before, context.RequestAborted);
        var answer = designs.HeatLog(machineId, new(LogSource.Of(log), before is null ? null : LogSource.Of(before), typed[Body], typed[Sensor], typed[Output], typed))!;
        if (answer.Value is not { } view)
            return Page(heat, typed, builds, context, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(form, keep => Measurements.Of(Form, view.Sheet, keep), [.. new[] { log, before }.OfType<NamedText>().Select(Measurements.FileOf)], typed, builds, measuring, context.RequestAborted);
        return Page(heat, typed, builds, context, view, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static IResult Missing() => TroubleEndpoints.Missing("There is no such machine.");

    private static IResult Page(
        HeatView heat, IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, HeatLogView? view, BuildSummary? kept, Refusal? refusal) =>
        PageResult.Of<HeatLogPage>(
            new HeatLogPageView(heat, view, new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), view?.Sheet, kept, refusal)),
            refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
