using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
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

    private static readonly Diagnostic NoLog = new("missing-log", new SourcePlace(Log, 0, 0), "There is no log.", "Choose a file, or paste its rows.");

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk measuring)
    {
        routes.MapGet("/machines/{machineId}/heat/log", async (HttpContext context, string machineId, IBench bench, IDesignDesk designs) =>
            PageOf(machineId, designs, measuring) is { } page ? await page.BlankAsync(context, bench) : Missing());
        routes.MapPost("/machines/{machineId}/heat/log", async (HttpContext context, string machineId, IBench bench, IDesignDesk designs) =>
            PageOf(machineId, designs, measuring) is { } page ? await page.AnswerAsync(context, bench) : Missing());
    }

    private static MeasuringPage<HeatLogView>? PageOf(string machineId, IDesignDesk designs, IMeasuringDesk measuring) => designs.Heat(machineId) is not { } heat ? null : new(measuring)
    {
        Fields = [.. HeatLogFields.All.Select(field => field.Name), Log, Before, Body, Sensor, Output],
        Judge = (form, typed, cancellation) => JudgeAsync(machineId, designs, form, typed, cancellation),
        Record = (view, keep) => Measurements.Of(Form, view.Sheet, keep),
        Show = (view, log) => PageResult.Of<HeatLogPage>(new HeatLogPageView(heat, log, view with { Sheet = log?.Sheet }), view.Status),
    };

    private static async Task<Judged<HeatLogView>> JudgeAsync(
        string machineId, IDesignDesk designs, PostedForm form, IReadOnlyDictionary<string, string> typed, CancellationToken cancellation)
    {
        if (await MeasureForm.TextAsync(form, Log, cancellation) is not { } log)
            return new(Outcome.Refused<HeatLogView>([NoLog]), []);
        var before = await MeasureForm.TextAsync(form, Before, cancellation);
        var request = new HeatLogRequest(LogSource.Of(log), before is null ? null : LogSource.Of(before), typed[Body], typed[Sensor], typed[Output], typed);
        return new(designs.HeatLog(machineId, request)!, MeasureForm.Files(log, before));
    }

    private static IResult Missing() => TroubleEndpoints.Missing("There is no such machine.");
}
