using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Photo;

/// <summary>Hands out photographs; only of the two types that are taken, so that nothing else can be run from here.</summary>
internal static class PhotoEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/builds/{buildId}/photos/{sha256}", SendAsync);

    private static async Task<IResult> SendAsync(string buildId, string sha256, HttpContext context, IBench bench)
    {
        var photo = await bench.PhotoAsync(buildId, sha256, context.RequestAborted);
        if (photo is not { ContentType: "image/jpeg" or "image/png" })
            return TroubleEndpoints.Missing("There is no such photograph.");
        // The address names the content, so it never changes.
        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return TypedResults.Bytes(photo.Bytes, photo.ContentType);
    }
}
