using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Resonance;

/// <summary>Resonances and shapers from recordings of acceleration.</summary>
internal static class ResonanceEndpoints
{
    public const string Form = "resonance";

    // A larger file is analysed and not kept: the record would grow by it for good.
    private const long MostKept = 20_000_000;

    private static readonly Dictionary<string, string> Nothing = [];

    /// <summary>The recordings, as the form names them.</summary>
    public static IReadOnlyList<(string Name, string Label)> Files { get; } =
        [("recording", "Recording, or that of the x axis driven alone"), ("other", "Recording of the y axis driven alone"), ("after", "After a change: the first again"), ("other-after", "After a change: that of the y axis again")];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk)
    {
        routes.MapGet(Addresses.Resonance, async (HttpContext context, IBench bench) => Page(Nothing, await bench.BuildsAsync(context.RequestAborted), context, null, null, null));
        routes.MapPost(Addresses.Resonance, (HttpContext context, IBench bench) => AnswerAsync(context, bench, desk));
    }

    private static async Task<IResult> AnswerAsync(HttpContext context, IBench bench, IMeasuringDesk desk)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var typed = MeasureForm.Typed(form, [.. ResonanceFields.All.Select(field => field.Name), .. ResonanceRequest.Choices.Select(choice => choice.Name)]);
        if (form.Problems.Count > 0)
            return Page(typed, builds, context, null, null, form.Refuse(form.Problems));
        IFormFile?[] files = [.. Files.Select(file => form.File(file.Name))];
        var answer = ResonanceStudy.Of(new ResonanceRequest(Given(files[..2]), Given(files[2..]), typed, typed));
        if (answer.Value is not { } study)
            return Page(typed, builds, context, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(form, keep => Measurements.Of(Form, study.Sheet, keep), await DataAsync(files, context.RequestAborted), typed, builds, desk, context.RequestAborted);
        return Page(typed, builds, context, study, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static ShakeFile[] Given(IFormFile?[] files) =>
        [.. files.Where(file => file is { Length: > 0 }).Select(file => new ShakeFile(Path.GetFileName(file!.FileName), file.OpenReadStream))];

    // The record does not grow by recordings of any length.
    private static async Task<IReadOnlyList<MeasuredFile>> DataAsync(IFormFile?[] files, CancellationToken cancellation)
    {
        List<MeasuredFile> kept = [];
        foreach (var file in files.OfType<IFormFile>().Where(file => file.Length is > 0 and <= MostKept))
        {
            using var reader = new StreamReader(file.OpenReadStream(), Encoding.UTF8);
            kept.Add(Measurements.FileOf(new NamedText(Path.GetFileName(file.FileName), await reader.ReadToEndAsync(cancellation))));
        }

        return kept;
    }

    private static IResult Page(IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, ResonanceStudyView? study, BuildSummary? kept, Refusal? refusal) =>
        PageResult.Of<ResonancePage>(
            new ResonancePageView(new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), study?.Sheet, kept, refusal), study),
            refusal is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
}
