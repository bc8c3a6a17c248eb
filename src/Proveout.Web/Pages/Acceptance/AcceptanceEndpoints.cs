using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Acceptance;

/// <summary>What to watch, prove and look at again, of a machine or of a build.</summary>
internal static class AcceptanceEndpoints
{
    private const double UsualHoursAWeek = 10;
    private const double HoursOfAWeek = 168;
    private static readonly Dictionary<string, AcceptedItem> Nothing = [];

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/machines/{machineId}/acceptance", (string machineId, IHandoverDesk desk) => desk.AcceptanceOfMachine(machineId) is { } list
            ? PageResult.Of<AcceptancePage>(new AcceptancePageView(new(list, Nothing), Addresses.Acceptance(machineId), null, "", null))
            : TroubleEndpoints.Missing("There is no such machine."));
        routes.MapGet("/machines/{machineId}/acceptance/{name}", File);
        routes.MapGet("/builds/{buildId}/acceptance", ShowAsync);
        routes.MapPost("/builds/{buildId}/acceptance", EnterAsync);
    }

    private static IResult File(string machineId, string name, string? first, string? hours, IHandoverDesk desk)
    {
        if (desk.AcceptanceOfMachine(machineId) is not { } list)
            return TroubleEndpoints.Missing("There is no such machine.");
        if (name != "calendar.ics")
            return AcceptanceFiles.Of(list).FirstOrDefault(file => file.Name == name) is { } file ? FileResult.Of(file) : TroubleEndpoints.Missing("There is no such file.");
        var day = DateOnly.TryParseExact(first, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var given) ? given : DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        var week = double.TryParse(hours, NumberStyles.Float, CultureInfo.InvariantCulture, out var typed) && typed is > 0 and <= HoursOfAWeek ? typed : UsualHoursAWeek;
        return FileResult.Of(AcceptanceCalendar.Of(list, day, week));
    }

    private static async Task<IResult> ShowAsync(string buildId, HttpContext context, IBench bench, IHandoverDesk desk) =>
        await ViewAsync(buildId, context, bench, desk) is { } view ? PageResult.Of<AcceptancePage>(view) : TroubleEndpoints.Missing("There is no such build, or its machine is not at hand.");

    private static async Task<IResult> EnterAsync(string buildId, HttpContext context, IBench bench, IHandoverDesk desk)
    {
        if (await ViewAsync(buildId, context, bench, desk) is not { } view)
            return TroubleEndpoints.Missing("There is no such build, or its machine is not at hand.");
        var form = await PostedForm.ReadAsync(context);
        var person = form.Person(view.Person);
        var problems = form.Problems;
        if (problems.Count == 0)
            problems =
            [
                .. (await desk.AcceptAsync(buildId, form.Name, form.Text("found"), form.Text("note"), person, form.Key, context.RequestAborted)).Diagnostics.Select(Refusal.Sentence),
            ];
        return FormAnswer.Of<AcceptancePage>(context, form, problems, refusal => view with { Refusal = refusal }, person, $"{view.Address}#item-{form.Name}");
    }

    private static async Task<AcceptancePageView?> ViewAsync(string buildId, HttpContext context, IBench bench, IHandoverDesk desk) =>
        await bench.StateAsync(buildId, context.RequestAborted) is { } state && await desk.AcceptanceOfBuildAsync(buildId, context.RequestAborted) is { } acceptance
            ? new(acceptance, Addresses.BuildAcceptance(buildId), state, PersonCookie.Read(context, state.Build.Builder), null)
            : null;
}
