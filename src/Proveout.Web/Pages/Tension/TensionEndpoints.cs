using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Tension;

/// <summary>Tension of a belt from its sound. The answer comes with the form, and is kept where a build is chosen.</summary>
internal static class TensionEndpoints
{
    public const string Form = "tension";
    public const string Left = "recording";
    public const string Right = "other-recording";

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk? desk) =>
        new MeasuringPage<SoundingView>(desk)
        {
            Fields = [.. SoundingFields.All.Select(field => field.Name)],
            Judge = JudgeAsync,
            Record = Measurements.Of,
            Show = (view, sounding) => PageResult.Of<TensionPage>(new TensionPageView(view, sounding), view.Status),
        }.Map(routes, Addresses.Tension);

    private static async Task<Judged<SoundingView>> JudgeAsync(PostedForm form, IReadOnlyDictionary<string, string> typed, CancellationToken cancellation)
    {
        List<SoundFile> recordings = [];
        foreach (var field in new[] { Left, Right })
            if (form.File(field) is { Length: > 0 } file)
                recordings.Add(await ReadAsync(file, cancellation));
        return new(Sounding.Of(new SoundingRequest(recordings, typed)), [.. recordings.Select(Measurements.FileOf)]);
    }

    // One byte more than is taken shows that a file is too large; what it is, its content tells and not its name.
    private static async Task<SoundFile> ReadAsync(IFormFile file, CancellationToken cancellation)
    {
        var bytes = new byte[Math.Min(file.Length, SoundFile.MostBytes + 1)];
        using var stream = file.OpenReadStream();
        await stream.ReadExactlyAsync(bytes, cancellation);
        return new SoundFile(Path.GetFileName(file.FileName), bytes);
    }
}
