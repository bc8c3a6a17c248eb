using System.Text;
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

    /// <summary>The recordings, as the form names them.</summary>
    public static IReadOnlyList<(string Name, string Label)> Files { get; } =
        [("recording", "Recording, or that of the x axis driven alone"), ("other", "Recording of the y axis driven alone"), ("after", "After a change: the first again"), ("other-after", "After a change: that of the y axis again")];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk) =>
        new MeasuringPage<ResonanceStudyView>(desk)
        {
            Fields = [.. ResonanceFields.All.Select(field => field.Name), .. ResonanceRequest.Choices.Select(choice => choice.Name)],
            Judge = JudgeAsync,
            Record = (study, keep) => Measurements.Of(Form, study.Sheet, keep),
            Show = (view, study) => PageResult.Of<ResonancePage>(new ResonancePageView(view with { Sheet = study?.Sheet }, study), view.Status),
        }.Map(routes, Addresses.Resonance);

    private static async Task<Judged<ResonanceStudyView>> JudgeAsync(PostedForm form, IReadOnlyDictionary<string, string> typed, CancellationToken cancellation)
    {
        IFormFile?[] files = [.. Files.Select(file => form.File(file.Name))];
        var answer = ResonanceStudy.Of(new ResonanceRequest(Given(files[..2]), Given(files[2..]), typed, typed));
        return new(answer, answer.Value is null ? [] : await DataAsync(files, cancellation));
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
}
