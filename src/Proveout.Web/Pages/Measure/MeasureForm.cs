using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Http;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Measure;

/// <summary>What every page of measurements does with its form: read texts from files or fields, and keep the result when asked to.</summary>
internal static class MeasureForm
{
    public const string Build = "build";
    public const string Title = "title";

    /// <summary>A text from a file, or else from a field; null when there is neither.</summary>
    public static async Task<NamedText?> TextAsync(PostedForm form, string field, CancellationToken cancellation)
    {
        if (form.File($"{field}-file") is { Length: > 0 } file)
        {
            // The request as a whole is limited already, and refused in words when it is larger.
            var bytes = new byte[file.Length];
            using var stream = file.OpenReadStream();
            await stream.ReadExactlyAsync(bytes, cancellation);
            return new NamedText(Path.GetFileName(file.FileName), Encoding.UTF8.GetString(bytes));
        }

        return form.Text(field) is { Length: > 0 } text ? new NamedText(field, text) : null;
    }

    /// <summary>Those texts that there are, as files of a record.</summary>
    public static IReadOnlyList<MeasuredFile> Files(params IEnumerable<NamedText?> texts) => [.. texts.OfType<NamedText>().Select(Measurements.FileOf)];

    /// <summary>What was typed, by field, without the file and the form's own fields.</summary>
    public static Dictionary<string, string> Typed(PostedForm form, params IEnumerable<string> fields) =>
        fields.Append(Build).Append(Title).Append("person").ToDictionary(field => field, form.Text, StringComparer.Ordinal);

    /// <summary>What was said to be seen or read, by the identifiers of checks; what is no number is left out.</summary>
    public static Dictionary<string, double> Seen(IEnumerable<KeyValuePair<string, string>> typed) => typed
        .Select(pair => (pair.Key, Number: double.TryParse(pair.Value.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : (double?)null))
        .Where(pair => pair.Number is not null)
        .ToDictionary(pair => pair.Key, pair => pair.Number!.Value, StringComparer.Ordinal);

    /// <summary>Builds in whose record a result can be kept; none without a desk.</summary>
    public static async Task<IReadOnlyList<BuildSummary>> BuildsAsync(HttpContext context, IBench bench, IMeasuringDesk? desk) =>
        desk is null ? [] : await bench.BuildsAsync(context.RequestAborted);

    /// <summary>Keeps a result in the record of the chosen build, with the data behind it; the build, or why it was not kept; null when no build was chosen.</summary>
    public static async Task<Outcome<BuildSummary>?> KeepAsync(
        PostedForm form, Func<KeepRequest, MeasurementRequest> result, IReadOnlyList<MeasuredFile> files, IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, IMeasuringDesk? desk, CancellationToken cancellation)
    {
        if (desk is null || form.Text(Build) is not { Length: > 0 } id)
            return null;
        if (builds.FirstOrDefault(build => build.Id == id) is not { } build)
            return Outcome.Refused<BuildSummary>([new Diagnostic("no-such-build", new SourcePlace("record", 0, 0), "There is no such build.", "Choose one of the list.")]);
        // Where it is kept and by whom the entry says by itself.
        var measured = typed.Where(pair => pair.Key is not (Build or Title or "person")).ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);
        var kept = await desk.KeepAsync(id, result(new KeepRequest(form.Text(Title), measured, files, form.Person(build.Builder), form.Key)), cancellation);
        return kept.Value is null ? Outcome.Refused<BuildSummary>(kept.Diagnostics) : Outcome.Of(build);
    }
}
