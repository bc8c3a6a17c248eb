using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Check;

/// <summary>Makes a reading of what a browser heard; enters nothing.</summary>
internal static class HeardEndpoints
{
    private const int MostCharacters = 200;

    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet(Addresses.Heard, Understand);

    private static IResult Understand(string? text, string? unit) => TypedResults.Json(
        new Dictionary<string, string?> { ["reading"] = text is { Length: > 0 and <= MostCharacters } ? SpokenReading.TryRead(text, unit ?? "") : null });
}
