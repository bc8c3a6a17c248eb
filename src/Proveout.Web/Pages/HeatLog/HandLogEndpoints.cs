using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.HeatLog;

/// <summary>A log by thermometer and clock. The page carries its readings, so nothing is kept until the log is judged and kept.</summary>
internal static class HandLogEndpoints
{
    public const string Form = "by-hand";
    public const string Began = "began";
    public const string Rows = "rows";
    public const string Shown = "shown";
    public const string Output = "output";
    public const string Full = "full";
    public const string Do = "do";
    public const string Note = "note";
    public const string TakeBack = "take-back";

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/machines/{machineId}/heat/log/by-hand", (string machineId, string? body, IDesignDesk designs) =>
            designs.Heat(machineId) is { Bodies.Count: > 0 } heat ? Page(heat, HandLog.Empty(BodyOf(heat, body)), false, null) : Missing());
        routes.MapPost("/machines/{machineId}/heat/log/by-hand", async (HttpContext context, string machineId, IDesignDesk designs, TimeProvider clock) =>
            designs.Heat(machineId) is { Bodies.Count: > 0 } heat ? Answer(heat, await PostedForm.ReadAsync(context), clock.GetUtcNow().ToUnixTimeMilliseconds()) : Missing());
    }

    private static IResult Answer(HeatView heat, PostedForm form, long nowMilliseconds)
    {
        var isFull = form.Text(Output) == Full;
        var read = HandLog.Read(BodyOf(heat, form.Text(HeatLogEndpoints.Body)), form.Text(Began), form.Text(Rows));
        if (form.Problems.Count > 0 || read.Value is not { } log)
            return Page(heat, read.Value ?? HandLog.Empty(BodyOf(heat, null)), isFull, form.Refuse([.. form.Problems, .. read.Diagnostics.Select(Refusal.Sentence)]));
        if (form.Text(Do) == TakeBack)
            return Page(heat, log.WithoutLast(), isFull, null);
        var noted = log.With(form.Text(Shown), isFull, nowMilliseconds);
        return Page(heat, noted.Value ?? log, isFull, noted.Value is null ? form.Refuse([.. noted.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static string BodyOf(HeatView heat, string? asked) => (heat.Bodies.FirstOrDefault(body => body.Name == asked) ?? heat.Bodies[0]).Name;

    private static IResult Page(HeatView heat, HandLog log, bool isFull, Refusal? refusal) =>
        PageResult.Of<HandLogPage>(new HandLogPageView(heat, log, isFull, refusal), refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    private static IResult Missing() => TroubleEndpoints.Missing("There is no such machine, or it heats nothing.");
}
