using Microsoft.AspNetCore.Http;
using Proveout.Workshop;

namespace Proveout.Web.Hosting;

/// <summary>Sends a file to work from.</summary>
internal static class FileResult
{
    public static IResult Of(PaperFile file)
    {
        var content = new MemoryStream();
        file.Write(content);
        return TypedResults.Bytes(content.ToArray(), file.MediaType, file.Name);
    }
}
