using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;
using Proveout.Web.Access;
using Proveout.Workshop;

namespace Proveout.Web.Hosting;

/// <summary>Hands out the stylesheet, the script and the icon.</summary>
internal static class AssetEndpoints
{
    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/assets/{hash}/{name}", Send).Needs(Permission.Open);

    private static IResult Send(string hash, string name, HttpContext context)
    {
        var asset = Asset.All.FirstOrDefault(candidate => candidate.Name == name && candidate.Hash == hash);
        if (asset is null)
            return TypedResults.NotFound();
        context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
        return TypedResults.Bytes(asset.Bytes, asset.ContentType, entityTag: new EntityTagHeaderValue($"\"{asset.Hash}\""));
    }
}
