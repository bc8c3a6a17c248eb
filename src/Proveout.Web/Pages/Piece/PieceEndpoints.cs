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
        var page = new MeasuringPage<PieceAnswer>(desk)
        {
            Fields = [PieceWays.Name, .. PieceFields.All.Select(field => field.Name), .. Enumerable.Range(1, MostMeasures).Select(number => PieceFields.MeasureName(number.ToString(CultureInfo.InvariantCulture))), Readings],
            Judge = JudgeAsync,
            Record = (found, keep) => Measurements.Of(Form, found.Sheet, keep),
            Show = Page,
        };
        routes.MapGet(Addresses.Piece, (HttpContext context, IBench bench) => page.BlankAsync(context, bench, Sizes(context.Request)));
        routes.MapPost(Addresses.Piece, (HttpContext context, IBench bench) => page.AnswerAsync(context, bench));
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

    private static async Task<Judged<PieceAnswer>> JudgeAsync(PostedForm form, IReadOnlyDictionary<string, string> typed, CancellationToken cancellation)
    {
        var readings = await MeasureForm.TextAsync(form, Readings, cancellation);
        return new(PieceSheet.Of(new PieceRequest(typed, readings)), MeasureForm.Files(readings));
    }

    private static IResult Page(MeasurePageView view, PieceAnswer? answer)
    {
        var piece = PieceFiles.Of(view.Typed);
        return PageResult.Of<PiecePage>(
            new PiecePageView(view with { Sheet = answer?.Sheet }, piece.Value, answer, [.. piece.Diagnostics.Select(diagnostic => diagnostic.ToString())]),
            piece.Value is null ? StatusCodes.Status422UnprocessableEntity : view.Status);
    }

    private static Dictionary<string, string> Sizes(HttpRequest request) =>
        ShapeNames.ToDictionary(field => field, field => request.Query[field].ToString() is var text && text.Length <= LongestText ? text : text[..LongestText], StringComparer.Ordinal);
}
