using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Belts;

/// <summary>Belts of a machine, drawn with the axes where the address says.</summary>
internal static class BeltsEndpoints
{
    private const int MostAxes = 20;

    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/machines/{machineId}/belts", (string machineId, HttpRequest request, IDesignDesk desk) =>
        desk.Belts(machineId, PlacesOf(request)) is { } view ? PageResult.Of<BeltsPage>(view) : TroubleEndpoints.Missing("There is no such machine."));

    // What is no number leaves its axis in the middle: the drawing says where each axis stands.
    private static Dictionary<string, double> PlacesOf(HttpRequest request)
    {
        var places = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (name, value) in request.Query.Take(MostAxes))
            if (double.TryParse(value.ToString().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var place) && double.IsFinite(place))
                places[name] = place;
        return places;
    }
}
