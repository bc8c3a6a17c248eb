using Microsoft.AspNetCore.Builder;
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

    private static readonly Dictionary<string, string> Nothing = [];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk? desk)
    {
        routes.MapGet(Addresses.Tension, async (HttpContext context, IBench bench) => Page(Nothing, await MeasureForm.BuildsAsync(context, bench, desk), context, null, null, null));
        routes.MapPost(Addresses.Tension, (HttpContext context, IBench bench) => AnswerAsync(context, bench, desk));
    }

    private static async Task<IResult> AnswerAsync(HttpContext context, IBench bench, IMeasuringDesk? desk)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await MeasureForm.BuildsAsync(context, bench, desk);
        var typed = MeasureForm.Typed(form, SoundingFields.All.Select(field => field.Name));
        if (form.Problems.Count > 0)
            return Page(typed, builds, context, null, null, form.Refuse(form.Problems));
        List<SoundFile> recordings = [];
        foreach (var field in new[] { Left, Right })
            if (form.File(field) is { Length: > 0 } file)
                recordings.Add(await ReadAsync(file, context.RequestAborted));
        var answer = Sounding.Of(new SoundingRequest(recordings, typed));
        if (answer.Value is not { } view)
            return Page(typed, builds, context, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(form, keep => Measurements.Of(view, keep), [.. recordings.Select(Measurements.FileOf)], typed, builds, desk, context.RequestAborted);
        return Page(typed, builds, context, view, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static IResult Page(IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, SoundingView? sounding, BuildSummary? kept, Refusal? refusal) =>
        PageResult.Of<TensionPage>(
            new TensionPageView(new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), null, kept, refusal), sounding),
            refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

    // One byte more than is taken shows that a file is too large; what it is, its content tells and not its name.
    private static async Task<SoundFile> ReadAsync(IFormFile file, CancellationToken cancellation)
    {
        var bytes = new byte[Math.Min(file.Length, SoundFile.MostBytes + 1)];
        using var stream = file.OpenReadStream();
        await stream.ReadExactlyAsync(bytes, cancellation);
        return new SoundFile(Path.GetFileName(file.FileName), bytes);
    }
}
