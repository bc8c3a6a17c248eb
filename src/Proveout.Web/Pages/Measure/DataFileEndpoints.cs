using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Pages.Trouble;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Measure;

/// <summary>Hands out data files of measurements: always to be saved, never to be shown, with a name and a type of our own making.</summary>
internal static class DataFileEndpoints
{
    private const int LongestName = 80;

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk) =>
        routes.MapGet("/builds/{buildId}/files/{sha256}", (string buildId, string sha256, HttpContext context) => SendAsync(buildId, sha256, context, desk));

    private static async Task<IResult> SendAsync(string buildId, string sha256, HttpContext context, IMeasuringDesk desk)
    {
        if (await desk.FileAsync(buildId, sha256, context.RequestAborted) is not { } file)
            return TroubleEndpoints.Missing("There is no such data file.");
        var (type, ending) = file.ContentType switch
        {
            "audio/wav" => ("audio/wav", ".wav"),
            "text/csv" => ("text/csv; charset=utf-8", ".csv"),
            _ => ("application/octet-stream", ".bin"),
        };
        // The address names the content, so it never changes.
        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return TypedResults.Bytes(file.Bytes, type, SafeName(file.Name, ending));
    }

    /// <summary>A name that no system reads as a folder, a hidden file or a program.</summary>
    internal static string SafeName(string name, string ending)
    {
        var bare = name[(name.LastIndexOfAny(['/', '\\']) + 1)..];
        if (bare.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            bare = bare[..^ending.Length];
        var plain = string.Concat(bare.Take(LongestName).Select(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' ? letter : '-')).Trim('-');
        return $"{(plain.Length > 0 ? plain : "data")}{ending}";
    }
}
