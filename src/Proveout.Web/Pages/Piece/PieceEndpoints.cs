using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Proveout.Engine.Machine;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Piece;

/// <summary>The first test piece: its files, and what its readings say. Its sizes stand in the address, so that it can be passed on.</summary>
internal static class PieceEndpoints
{
    public const string Form = "piece";
    public const string Readings = "readings";

    // Of all ways of making.
    private const int MostMeasures = 31;
    private const int LongestText = 40;

    public static IReadOnlyList<string> ShapeNames { get; } = [PieceWays.Name, .. PieceFields.Shape.Select(field => field.Name)];

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk)
    {
        routes.MapGet(Addresses.Piece, async (HttpContext context, IBench bench) => Page(Sizes(context.Request), await bench.BuildsAsync(context.RequestAborted), context, null, null, null));
        routes.MapPost(Addresses.Piece, (HttpContext context, IBench bench) => AnswerAsync(context, bench, desk));
        MapFile(routes, PieceFilesView.StlName, "model/stl", piece => piece.Stl);
        MapFile(routes, PieceFilesView.ThreeMfName, PieceFilesView.ThreeMfType, piece => piece.ThreeMf);
        MapFile(routes, PieceFilesView.SvgName, "image/svg+xml", piece => Encoding.UTF8.GetBytes(piece.Svg));
        MapFile(routes, PieceFilesView.FormName, "text/csv; charset=utf-8", piece => Encoding.UTF8.GetBytes(piece.Form));
    }

    private static void MapFile(IEndpointRouteBuilder routes, string name, string type, Func<PieceFilesView, ReadOnlyMemory<byte>> bytes) =>
        routes.MapGet($"{Addresses.Piece}/{name}", (HttpRequest request) => Send(PieceFiles.Of(Sizes(request)), piece => TypedResults.File(bytes(piece).ToArray(), type, name)));

    private static IResult Send(Outcome<PieceFilesView> answer, Func<PieceFilesView, IResult> file) => answer.Value is { } piece
        ? file(piece)
        : TypedResults.Text(string.Join('\n', answer.Diagnostics), statusCode: StatusCodes.Status422UnprocessableEntity);

    private static async Task<IResult> AnswerAsync(HttpContext context, IBench bench, IMeasuringDesk desk)
    {
        var form = await PostedForm.ReadAsync(context);
        var builds = await bench.BuildsAsync(context.RequestAborted);
        var typed = MeasureForm.Typed(form, [PieceWays.Name, .. PieceFields.All.Select(field => field.Name), .. Enumerable.Range(1, MostMeasures).Select(number => PieceFields.MeasureName(number.ToString(CultureInfo.InvariantCulture))), Readings]);
        if (form.Problems.Count > 0)
            return Page(typed, builds, context, null, null, form.Refuse(form.Problems));
        var readings = await MeasureForm.TextAsync(form, Readings, context.RequestAborted);
        var answer = PieceSheet.Of(new PieceRequest(typed, readings));
        if (answer.Value is not { } found)
            return Page(typed, builds, context, null, null, form.Refuse([.. answer.Diagnostics.Select(diagnostic => diagnostic.ToString())]));
        var kept = await MeasureForm.KeepAsync(form, keep => Measurements.Of(Form, found.Sheet, keep), readings is null ? [] : [Measurements.FileOf(readings)], typed, builds, desk, context.RequestAborted);
        return Page(typed, builds, context, found, kept?.Value, kept is { Value: null } ? form.Refuse([.. kept.Diagnostics.Select(Refusal.Sentence)]) : null);
    }

    private static IResult Page(IReadOnlyDictionary<string, string> typed, IReadOnlyList<BuildSummary> builds, HttpContext context, PieceAnswer? answer, BuildSummary? kept, Refusal? refusal)
    {
        var piece = PieceFiles.Of(typed);
        return PageResult.Of<PiecePage>(
            new PiecePageView(new MeasurePageView(typed, builds, PersonCookie.Read(context, ""), answer?.Sheet, kept, refusal), piece.Value, answer, [.. piece.Diagnostics.Select(diagnostic => diagnostic.ToString())]),
            refusal is null && piece.Value is not null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);
    }

    private static Dictionary<string, string> Sizes(HttpRequest request) =>
        ShapeNames.ToDictionary(field => field, field => request.Query[field].ToString() is var text && text.Length <= LongestText ? text : text[..LongestText], StringComparer.Ordinal);
}
