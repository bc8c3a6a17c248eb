using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Settings;

/// <summary>What the controllers of a machine or of a build have to be told.</summary>
internal static class SettingsEndpoints
{
    private const string NoMachine = "There is no such machine.";
    private const string NoBuild = "There is no such build, or its machine is not at hand.";

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/machines/{machineId}/settings", (string machineId, IHandoverDesk desk) =>
            Page(desk.SettingsOfMachine(machineId), Addresses.Settings(machineId), NoMachine));
        routes.MapGet("/machines/{machineId}/settings/{name}", (string machineId, string name, IHandoverDesk desk) =>
            File(desk.SettingsOfMachine(machineId), name, NoMachine));
        routes.MapGet("/builds/{buildId}/settings", async (string buildId, IHandoverDesk desk, CancellationToken cancellation) =>
            Page(await desk.SettingsOfBuildAsync(buildId, cancellation), Addresses.BuildSettings(buildId), NoBuild));
        routes.MapGet("/builds/{buildId}/settings/{name}", async (string buildId, string name, IHandoverDesk desk, CancellationToken cancellation) =>
            File(await desk.SettingsOfBuildAsync(buildId, cancellation), name, NoBuild));
    }

    private static IResult Page(SettingsView? view, string address, string missing) =>
        view is null ? TroubleEndpoints.Missing(missing) : PageResult.Of<SettingsPage>(new SettingsPageView(view, address));

    private static IResult File(SettingsView? view, string name, string missing) =>
        view is null ? TroubleEndpoints.Missing(missing)
        : SettingsFiles.Of(view).FirstOrDefault(file => file.Name == name) is { } file ? FileResult.Of(file)
        : TroubleEndpoints.Missing("There is no such file.");
}
