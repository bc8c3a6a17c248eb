using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Frame;

/// <summary>Squareness, twist, racking and rails of a frame.</summary>
internal static class FrameEndpoints
{
    public const string Form = "frame";
    public const string Rail = "rail";
    public const string Points = "points";
    public const string Distances = "distances";

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk) =>
        new MeasuringPage<SheetView>(desk)
        {
            Fields = [.. FrameFields.All.Select(field => field.Name), Rail, Points, Distances, .. FrameSeen.Ids],
            Judge = JudgeAsync,
            Record = (sheet, keep) => Measurements.Of(Form, sheet, keep),
            Show = (view, _) => PageResult.Of<FramePage>(view, view.Status),
        }.Map(routes, Addresses.Frame);

    private static async Task<Judged<SheetView>> JudgeAsync(PostedForm form, IReadOnlyDictionary<string, string> typed, CancellationToken cancellation)
    {
        var rail = await MeasureForm.TextAsync(form, Rail, cancellation);
        var points = await MeasureForm.TextAsync(form, Points, cancellation);
        var distances = await MeasureForm.TextAsync(form, Distances, cancellation);
        var seen = MeasureForm.Seen(typed.Where(pair => FrameSeen.Ids.Contains(pair.Key)));
        return new(FrameSheet.Of(new FrameRequest(typed, rail) { Points = points, Distances = distances, Seen = seen }), MeasureForm.Files(rail, points, distances));
    }
}
