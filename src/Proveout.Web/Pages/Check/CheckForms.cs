using Microsoft.AspNetCore.Http;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Check;

/// <summary>Hands a form of the check page to the bench.</summary>
internal sealed class CheckForms(IBench bench, IBuildsDesk builds, CheckView view, PostedForm form, CancellationToken cancellation)
{
    private string Person => form.Person(view.Person);

    private bool SeenOpen => form.Text("seen") == "open";

    private string CheckId => view.Step.Check.Id;

    /// <summary>Enters the form; returns what is wrong with it, nothing when it was taken.</summary>
    public async Task<IReadOnlyList<string>> EnterAsync() =>
        form.Problems.Count > 0 ? form.Problems : form.Name switch
        {
            "reading" => await ReadingAsync(),
            "skip" => await SkipAsync(),
            "deviation" => await DeviationAsync(),
            "photo" => await PhotoAsync(),
            _ when form.Name.StartsWith(HintsPart.Form, StringComparison.Ordinal) => await AnswerAsync(),
            _ => ["This form is not known here, so nothing was entered. Use one of the forms of this page."],
        };

    /// <summary>Where to go once the form is taken.</summary>
    public string NextAddress =>
        form.Name is "deviation" or "photo" ? $"{view.Address}#notes"
        : form.Name.StartsWith(HintsPart.Form, StringComparison.Ordinal) ? $"{view.Address}#hints"
        : view.Address;

    private async Task<IReadOnlyList<string>> ReadingAsync() =>
        Sentences(await bench.EnterReadingAsync(view.BuildId, Reading(), cancellation));

    private ReadingRequest Reading() => new(CheckId, form.Text("text"), Person, form.Key) { SeenOpen = SeenOpen };

    private SkipRequest Skip() => new(CheckId, form.Text("reason"), Person, form.Key) { SeenOpen = SeenOpen };

    private async Task<IReadOnlyList<string>> SkipAsync() =>
        form.Text("reason").Length == 0
            ? ["No reason is given. Say in a few words why the check is left out."]
            : Sentences(await bench.SkipAsync(view.BuildId, Skip(), cancellation));

    private async Task<IReadOnlyList<string>> DeviationAsync() =>
        form.Text("note").Length == 0
            ? ["Nothing is noted. Say what differs from the guide or the drawing."]
            : Sentences(await bench.NoteDeviationAsync(view.BuildId, new DeviationRequest(CheckId, form.Text("note"), Person, form.Key), cancellation));

    private async Task<IReadOnlyList<string>> PhotoAsync()
    {
        if (form.Photo is not { Length: > 0 } photo)
            return ["No photograph is chosen. Choose a JPEG or PNG file."];
        if (photo.Length > UploadLimits.PhotoBytes)
            return [$"{photo.FileName} is larger than 12 MB. Choose a smaller photograph, or take it again with a lower resolution."];
        return Sentences(await bench.AttachPhotoAsync(view.BuildId, await PhotoRequestAsync(photo), cancellation));
    }

    private async Task<PhotoRequest> PhotoRequestAsync(IFormFile photo)
    {
        using var bytes = new MemoryStream((int)photo.Length);
        await photo.CopyToAsync(bytes, cancellation);
        return new PhotoRequest(CheckId, form.Text("caption"), photo.FileName, photo.ContentType, bytes.ToArray(), Person, form.Key);
    }

    private async Task<IReadOnlyList<string>> AnswerAsync()
    {
        if (form.Text("answer") is not ("so" or "not-so"))
            return ["The form does not say whether it is so here. Press one of its two buttons."];
        var at = int.TryParse(form.Text("entry"), out var entry) ? entry : 0;
        var answer = new DeviationAnswer(form.Text("noted-in"), at, form.Text("answer") == "so", form.Text("note"), Person, form.Key);
        var entered = await builds.AnswerAsync(view.BuildId, answer, cancellation);
        return [.. entered.Diagnostics.Select(Refusal.Sentence)];
    }

    private static IReadOnlyList<string> Sentences(Outcome<BenchState> outcome) => [.. outcome.Diagnostics.Select(Refusal.Sentence)];
}
