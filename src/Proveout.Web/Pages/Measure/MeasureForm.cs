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

    /// <summary>What was typed, by field, without the file and the form's own fields.</summary>
    public static Dictionary<string, string> Typed(PostedForm form, params IEnumerable<string> fields) =>
        fields.Append(Build).Append(Title).Append("person").ToDictionary(field => field, form.Text, StringComparer.Ordinal);

    /// <summary>Keeps the result in the record of the chosen build, with the data behind it; the build, or why it was not kept.</summary>
    public static async Task<Outcome<BuildSummary>?> KeepAsync(
        PostedForm form, string analysis, SheetView sheet, NamedText? data, IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, IMeasuringDesk desk, CancellationToken cancellation)
    {
        if (form.Text(Build) is not { Length: > 0 } id)
            return null;
        if (builds.FirstOrDefault(build => build.Id == id) is not { } build)
            return Outcome.Refused<BuildSummary>([new Diagnostic("no-such-build", new SourcePlace("record", 0, 0), "There is no such build.", "Choose one of the list.")]);
        var kept = await desk.KeepAsync(
            id,
            new MeasurementRequest(
                analysis,
                form.Text(Title) is { Length: > 0 } title ? title : TitleOf(analysis),
                string.Join(" ", sheet.Findings),
                [.. sheet.Figures.Select(figure => new KeptFigure(figure.Name, figure.Figure.Value, figure.Figure.Expanded, figure.Unit))],
                typed,
                data is null ? null : new MeasuredFile(data.Name, "text/csv", Encoding.UTF8.GetBytes(data.Text)),
                form.Person(build.Builder),
                form.Key),
            cancellation);
        return kept.Value is null ? Outcome.Refused<BuildSummary>(kept.Diagnostics) : Outcome.Of(build);
    }

    private static string TitleOf(string analysis) => analysis switch
    {
        "level" => "Plate",
        "piece" => "First piece",
        "heat-log" => "Log of a heater",
        _ => $"{char.ToUpperInvariant(analysis[0])}{analysis[1..]}",
    };
}
