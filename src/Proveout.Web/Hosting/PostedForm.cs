using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Proveout.Engine.Machine;
using Proveout.Web.Access;
using Proveout.Workshop;

namespace Proveout.Web.Hosting;

/// <summary>A form as it came in. It is read before it is trusted, so that what was typed survives a refusal.</summary>
internal sealed class PostedForm
{
    private const string TooLarge =
        "What was sent is too large to be read, so nothing was entered. Choose a photograph of at most 12 MB, or a recording of at most 20 MB, and send it again.";

    private static readonly string TooLong =
        $"A text here is longer than {UploadLimits.TextCharacters} characters, so nothing was entered. Shorten it and send it again.";

    private const string CutOff = "What was sent ended in the middle, so nothing was entered. Send it again.";

    private const string NotOurs =
        "The bench was started anew, or you signed in anew, since this page was opened, so it could not tell whether the form is its own. Nothing was entered. What you typed still stands here: send it again.";

    private readonly IFormCollection _fields;

    private readonly SignedIn? _who;

    private PostedForm(HttpContext context, IFormCollection fields, IReadOnlyList<string> problems)
    {
        (_fields, Problems, _who) = (fields, problems, Visit.Of(context));
        Name = Text("form") is { Length: > 0 } name ? name : context.Request.Query[Addresses.FormKey].ToString();
    }

    /// <summary>Why the form cannot be taken as it is; empty when it can.</summary>
    public IReadOnlyList<string> Problems { get; }

    /// <summary>The form's name; that of the address when the form could not be read; empty when neither says it.</summary>
    public string Name { get; }

    public Guid Key => Guid.TryParse(Text("key"), out var key) ? key : Guid.Empty;

    public IFormFile? Photo => _fields.Files.GetFile("photo");

    /// <summary>A file that came with the form; null when there is none.</summary>
    public IFormFile? File(string field) => _fields.Files.GetFile(field);

    /// <summary>Reads a form.</summary>
    /// <param name="context">The request.</param>
    /// <param name="longField">A field that may be as long as a file; none when left out.</param>
    public static async Task<PostedForm> ReadAsync(HttpContext context, string longField = "")
    {
        if (!context.Request.HasFormContentType)
            return new(context, FormCollection.Empty, [NotOurs]);
        try
        {
            var fields = await context.Request.ReadFormAsync(context.RequestAborted);
            var guard = context.RequestServices.GetRequiredService<IAntiforgery>();
            if (!await guard.IsRequestValidAsync(context) || !Guid.TryParse(fields["key"], out _))
                return new(context, fields, [NotOurs]);
            return new(context, fields, fields.Any(field => field.Key != longField && field.Value.ToString().Length > UploadLimits.TextCharacters) ? [TooLong] : []);
        }
        catch (Exception exception) when (exception is InvalidDataException or BadHttpRequestException)
        {
            return new(context, FormCollection.Empty, [TooLarge]);
        }
        catch (IOException)
        {
            return new(context, FormCollection.Empty, [CutOff]);
        }
    }

    /// <summary>A field's text without blanks around it and without marks that nobody sees or types; empty when there is no such field.</summary>
    public string Text(string field) => UnseenMarks.Replaced(_fields[field].ToString(), "").Trim();

    /// <summary>A field's text as it came, blanks and line breaks included; null when there is no such field.</summary>
    public string? Whole(string field) => _fields.TryGetValue(field, out var text) ? text.ToString() : null;

    /// <summary>The name of who is signed in, whatever the field says; else the field's, or another when it is empty.</summary>
    /// <param name="otherwise">The other name.</param>
    /// <param name="field">The field.</param>
    public string Person(string otherwise, string field = "person") => _who is not null ? _who.Name : Text(field) is { Length: > 0 } person ? person : otherwise;

    public Refusal Refuse(IReadOnlyList<string> sentences) =>
        new(Name, sentences, _fields.Keys.ToDictionary(field => field, Text, StringComparer.Ordinal));
}
