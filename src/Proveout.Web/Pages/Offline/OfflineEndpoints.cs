using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Access;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Offline;

/// <summary>What a device keeps to go on while the link is down: the worker, the page that says so, and what makes the bench installable.</summary>
internal static class OfflineEndpoints
{
    private static readonly string[] Shell =
    [
        Addresses.Offline, Asset.Stylesheet.Address, Asset.Script.Address, Asset.Queue.Address, Asset.Link.Address, Asset.Hands.Address, Asset.Icon.Address,
    ];

    private static readonly byte[] Worker = WorkerText();

    private static readonly byte[] Manifest = JsonSerializer.SerializeToUtf8Bytes(new Dictionary<string, object>
    {
        ["name"] = "Proveout",
        ["short_name"] = "Proveout",
        ["description"] = "The bench of a machine that moves and heats.",
        ["id"] = Addresses.Front,
        ["start_url"] = Addresses.Front,
        ["scope"] = Addresses.Front,
        ["display"] = "standalone",
        ["background_color"] = "#f2f5f3",
        ["theme_color"] = "#0b4f8a",
        ["icons"] = new object[]
        {
            Icon(Asset.Icon, "any", "any"), Icon(Asset.SmallIcon, "192x192", "any maskable"), Icon(Asset.LargeIcon, "512x512", "any maskable"),
        },
    });

    // Nothing of them is the workshop's own, and a browser asks for some of them without saying who it is.
    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.Offline, () => PageResult.Of<OfflinePage>(OfflineView.Only)).Needs(Permission.Open);
        routes.MapGet(Addresses.Worker, () => TypedResults.Bytes(Worker, Asset.Worker.ContentType)).Needs(Permission.Open);
        routes.MapGet(Addresses.Manifest, () => TypedResults.Bytes(Manifest, "application/manifest+json")).Needs(Permission.Open);
    }

    // The worker changes whenever a file that it keeps does, and so a browser fetches them anew.
    private static byte[] WorkerText()
    {
        var version = Convert.ToHexStringLower(SHA256.HashData([.. Encoding.UTF8.GetBytes(string.Join('\n', Shell)), .. Asset.Worker.Bytes]))[..16];
        var facts = JsonSerializer.Serialize(new { version, shell = Shell, offline = Addresses.Offline, signOut = Addresses.SignOut }, JsonSerializerOptions.Web);
        return [.. Encoding.UTF8.GetBytes($"importScripts(\"{Asset.Queue.Address}\");\nconst bench = {facts};\n"), .. Asset.Worker.Bytes];
    }

    private static Dictionary<string, string> Icon(Asset asset, string sizes, string purpose) => new()
    {
        ["src"] = asset.Address,
        ["sizes"] = sizes,
        ["type"] = asset.ContentType,
        ["purpose"] = purpose,
    };
}
