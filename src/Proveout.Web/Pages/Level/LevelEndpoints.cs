using Microsoft.AspNetCore.Routing;
using Proveout.Web.Hosting;
using Proveout.Web.Pages.Measure;
using Proveout.Workshop;

namespace Proveout.Web.Pages.Level;

/// <summary>Levelling of a plate from probed heights.</summary>
internal static class LevelEndpoints
{
    public const string Form = "level";
    public const string Heights = "heights";
    public const string Later = "later";
    public const string Repeats = "repeats";
    public const string Supports = "supports";
    public const string Leave = "leave";
    public const string Clockwise = "clockwise";
    public const string Lowers = "lowers";
    public const string Bend = "bend";
    public const string May = "may";

    public static void Map(IEndpointRouteBuilder routes, IMeasuringDesk desk) =>
        new MeasuringPage<SheetView>(desk)
        {
            Fields = [.. LevelFields.All.Select(field => field.Name), Heights, Later, Repeats, Supports, Leave, Clockwise, Bend],
            Judge = JudgeAsync,
            Record = (sheet, keep) => Measurements.Of(Form, sheet, keep),
            Show = (view, _) => PageResult.Of<LevelPage>(view, view.Status),
        }.Map(routes, Addresses.Level);

    private static async Task<Judged<SheetView>> JudgeAsync(PostedForm form, IReadOnlyDictionary<string, string> typed, CancellationToken cancellation)
    {
        var map = await MeasureForm.TextAsync(form, Heights, cancellation);
        var repeats = await MeasureForm.TextAsync(form, Repeats, cancellation);
        var later = await MeasureForm.TextAsync(form, Later, cancellation);
        var request = new LevelRequest(map, later, typed[Supports], repeats, typed[Leave], typed[Clockwise] == Lowers, typed[Bend] == May, typed);
        return new(LevelSheet.Of(request), MeasureForm.Files(map, later, repeats));
    }
}
