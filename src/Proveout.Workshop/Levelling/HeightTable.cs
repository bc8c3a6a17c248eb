using Proveout.Engine.Machine;
using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>Reads probed heights.</summary>
internal static class HeightTable
{
    // Far beyond any plate; heights of a kilometre have no drawing.
    private const double MostMillimetres = 10_000;

    /// <summary>The points of a table or grid; null when something is wrong, which is added to the problems.</summary>
    public static IReadOnlyList<ProbePoint>? Read(NamedText text, TypedFigures typed, List<Diagnostic> problems)
    {
        // The letters of 1e-3 and of nan are no heading; a table must name x and y, which are.
        var hasHeadings = text.Text.Any(letter => char.IsLetter(letter) && letter is not ('e' or 'E' or 'n' or 'N' or 'a' or 'A'));
        var points = hasHeadings ? FromTable(text, problems) : FromGrid(text, typed, problems);
        if (points is null || points.All(IsNear))
            return points;
        problems.Add(new("out-of-range", new SourcePlace(text.Name, 0, 0), $"Some place or height is further away than {MostMillimetres / 1000:0} m.", "Give places and heights in mm, or their unit in the heading."));
        return null;
    }

    private static bool IsNear(ProbePoint point) =>
        Math.Abs(point.XMillimetres) <= MostMillimetres && Math.Abs(point.YMillimetres) <= MostMillimetres && Math.Abs(point.HeightMillimetres) <= MostMillimetres;

    private static IReadOnlyList<ProbePoint>? FromTable(NamedText text, List<Diagnostic> problems)
    {
        var read = DelimitedText.Read(text.Text, text.Name);
        problems.AddRange(read.Diagnostics);
        if (read.Value is not { } table)
            return null;
        var x = table.Wanted("mm", problems, "x");
        var y = table.Wanted("mm", problems, "y");
        var height = table.Wanted("mm", problems, "height", "z", "h");
        return x is null || y is null || height is null
            ? null
            : [.. Enumerable.Range(0, x.Count).Select(row => new ProbePoint(x[row], y[row], height[row])).Where(point => double.IsFinite(point.XMillimetres + point.YMillimetres + point.HeightMillimetres))];
    }

    private static IReadOnlyList<ProbePoint>? FromGrid(NamedText text, TypedFigures typed, List<Diagnostic> problems)
    {
        var (spacingX, spacingY) = (typed.Require(LevelFields.SpacingX), typed.Require(LevelFields.SpacingY));
        var read = DelimitedText.ReadGrid(text.Text, text.Name);
        problems.AddRange(read.Diagnostics);
        return read.Value is not { } rows
            ? null
            : [.. from row in rows.Index() from cell in row.Item.Index() where double.IsFinite(cell.Item) select new ProbePoint(cell.Index * spacingX, row.Index * spacingY, cell.Item)];
    }
}
