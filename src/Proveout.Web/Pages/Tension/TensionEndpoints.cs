using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Tension;

/// <summary>Tension of a belt from its sound. Nothing is kept: the answer comes with the form.</summary>
internal static class TensionEndpoints
{
    public const string Form = "tension";
    public const string Left = "recording";
    public const string Right = "other-recording";

    private static readonly Dictionary<string, string> Nothing = [];

    public static void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet(Addresses.Tension, () => PageResult.Of<TensionPage>(new TensionPageView(Nothing, null, null)));
        routes.MapPost(Addresses.Tension, (Delegate)AnswerAsync);
    }

    private static async Task<IResult> AnswerAsync(HttpContext context)
    {
        var form = await PostedForm.ReadAsync(context);
        var typed = SoundingFields.All.ToDictionary(field => field.Name, field => form.Text(field.Name), StringComparer.Ordinal);
        if (form.Problems.Count > 0)
            return Refused(typed, form.Refuse(form.Problems));
        List<SoundFile> recordings = [];
        foreach (var field in new[] { Left, Right })
            if (form.File(field) is { Length: > 0 } file)
                recordings.Add(await ReadAsync(file, context.RequestAborted));
        var answer = Sounding.Of(new SoundingRequest(recordings, typed));
        return answer.Value is { } view
            ? PageResult.Of<TensionPage>(new TensionPageView(typed, view, null))
            : Refused(typed, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
    }

    private static IResult Refused(IReadOnlyDictionary<string, string> typed, Refusal refusal) =>
        PageResult.Of<TensionPage>(new TensionPageView(typed, null, refusal), StatusCodes.Status422UnprocessableEntity);

    // One byte more than is taken shows that a file is too large; what it is, its content tells and not its name.
    private static async Task<SoundFile> ReadAsync(IFormFile file, CancellationToken cancellation)
    {
        var bytes = new byte[Math.Min(file.Length, SoundFile.MostBytes + 1)];
        using var stream = file.OpenReadStream();
        await stream.ReadExactlyAsync(bytes, cancellation);
        return new SoundFile(Path.GetFileName(file.FileName), bytes);
    }
}
