using System.Globalization;
using Proveout.Engine.Motion;
using Proveout.Publish.Drawings;

namespace Proveout.Workshop;

/// <summary>Draws probed heights as lines of equal height and as a surface.</summary>
internal static class PlateDrawings
{
    private const int MostLines = 10;
    private const int MostPlaces = 25;
    private const int MostCells = 14;
    private const int MostRows = 60;
    private const int MostSpots = 1200;

    // Below this range heights are written in µm.
    private const double FineMillimetres = 0.5;

    // Share of width and depth together that the heights take.
    private const double LiftShare = 0.2;

    /// <summary>Heights above their mean, as they were probed.</summary>
    public static SheetDrawing? AsProbed(PlateMap map, double probeError)
    {
        var mean = map.Points.Average(point => point.HeightMillimetres);
        return Of("plate-as-probed", "Heights as probed", "above their mean", [.. map.Points.Select(point => point with { HeightMillimetres = point.HeightMillimetres - mean })], probeError);
    }

    /// <summary>Heights above the least-squares plane: what levelling does not take away.</summary>
    public static SheetDrawing? WithoutTilt(PlateMap map, double probeError) =>
        Of("plate-without-tilt", "Shape without the tilt", "above the least-squares plane", [.. map.Points.Zip(map.Residuals, (point, residual) => point with { HeightMillimetres = residual })], probeError);

    /// <summary>What changed from one map to a later one.</summary>
    public static SheetDrawing? Changed(PlateMap change, double probeError) =>
        Of("plate-change", "Change with heat", "that a place rose, later less earlier", change.Points, probeError * Math.Sqrt(2));

    private static SheetDrawing? Of(string name, string title, string meaning, IReadOnlyList<ProbePoint> points, double probeError)
    {
        if (HeightField.Of(points) is not { } field)
            return null;
        var (highest, lowest) = (points.MaxBy(point => point.HeightMillimetres), points.MinBy(point => point.HeightMillimetres));
        var range = highest.HeightMillimetres - lowest.HeightMillimetres;
        var isFine = Math.Max(range, probeError) < FineMillimetres;
        var levels = range > probeError ? ContourLines.Levels(lowest.HeightMillimetres, highest.HeightMillimetres, MostLines, probeError) : [];
        var words = $"Heights {meaning}. Highest {Height(highest.HeightMillimetres, isFine)} at {Place(highest)}; lowest {Height(lowest.HeightMillimetres, isFine)} at {Place(lowest)}.";
        var step = ContourLines.RoundStep(Math.Max(range / MostLines, probeError));
        var scale = levels.Count > 0
            ? $"A line every {Height(step, isFine)}, no closer than the probe's error; heavy at 0, broken below.{(field.IsInterpolated ? " The points do not lie on a lattice; between them heights are taken as linear." : "")}"
            : "No lines: the heights differ by less than the probe's error.";
        var view = new PlateView(
            name,
            title,
            words,
            scale,
            Surface(field.Thinned(MostCells + 1), range, probeError, isFine),
            [.. Lines(field, levels).Select(line => Line(line.Level, step, line.Line, isFine))],
            [.. points.Select(point => new PlateMark(new(point.XMillimetres, point.YMillimetres), range > 0 && (point == highest || point == lowest) ? Height(point.HeightMillimetres, isFine) : ""))]);
        return new SheetDrawing(
            name,
            title,
            $"{words} {scale}",
            [(ContourDrawing.Of(view), $"{title}: lines of equal height. {words} {scale}{(points.Count <= ContourDrawing.MostCrosses ? " Crosses show where it was probed." : "")}"), (SurfaceDrawing.Of(view), $"{title}: surface from the front. {Exaggerated(view.Surface)} Hatched where below 0.")],
            PlateSheet.Of(view).Svg,
            TableOf(points, meaning, isFine));
    }

    // A row for each line of the lattice, front first: short enough for a telephone.
    private static SheetTable TableOf(IReadOnlyList<ProbePoint> points, string meaning, bool isFine)
    {
        var rows = points.GroupBy(point => Text(point.YMillimetres, "0.#")).OrderBy(row => row.First().YMillimetres).ToArray();
        return new(
            ["y, mm", $"Height {meaning}, {(isFine ? "µm" : "mm")}, at each x in mm"],
            [.. rows.Take(MostRows).Select(row => (string[])[row.Key, string.Join("; ", row.OrderBy(point => point.XMillimetres).Select(point => $"{Text(point.XMillimetres, "0.#")}: {Figure(point.HeightMillimetres, isFine)}"))])],
            rows.Skip(MostRows).Sum(row => row.Count()));
    }

    // Few places are divided, so that lines bend as the surface between them does; where that gives too much to draw, they are not; at last levels are left out.
    private static IEnumerable<(double Level, ContourLine Line)> Lines(HeightField field, IReadOnlyList<double> levels)
    {
        var thinned = field.Thinned(MostPlaces);
        var divided = thinned.Divided(Math.Max(1, MostPlaces / Math.Max(thinned.Xs.Count, thinned.Ys.Count)));
        (HeightField Field, int Every)[] ways = [(divided, 1), (thinned, 1), (thinned, 2), (field.Thinned(MostPlaces / 2), 2), (field.Thinned(MostPlaces / 2), 4)];
        var lines = ways.Select(way => All(way.Field, way.Every)).FirstOrDefault(found => found.Sum(each => each.Line.Spots.Count) <= MostSpots);
        return lines ?? All(ways[^1].Field, ways[^1].Every);

        // The level nearest to zero is kept in any case.
        (double Level, ContourLine Line)[] All(HeightField over, int every) =>
            [.. from level in levels where Math.Round(level / (levels.Count > 1 ? levels[1] - levels[0] : 1)) % every == 0 from line in ContourLines.Of(over, level) select (level, line)];
    }

    private static PlateLine Line(double level, double step, ContourLine line, bool isFine) => new(
        Figure(level, isFine),
        Math.Abs(level) < step / 2 ? 0 : Math.Sign(level),
        [.. line.Spots.Select(spot => new PlateSpot(spot.X, spot.Y))]);

    private static PlateSurface Surface(HeightField field, double range, double probeError, bool isFine)
    {
        var size = field.Xs[^1] - field.Xs[0] + field.Ys[^1] - field.Ys[0];
        var shown = Math.Max(range, probeError);
        return new(
            [.. field.Xs],
            [.. field.Ys],
            [.. from row in Enumerable.Range(0, field.Ys.Count) from column in Enumerable.Range(0, field.Xs.Count) select field.At(column, row)],
            Math.Max(1, Math.Round(1 / ContourLines.RoundStep(shown / (LiftShare * size)), 6)),
            ContourLines.RoundStep(Math.Max(shown / 4, probeError)),
            isFine);
    }

    private static string Exaggerated(PlateSurface surface) => string.Create(CultureInfo.InvariantCulture, $"Heights drawn {surface.Exaggeration:0.######} times larger than the plate.");

    private static string Place(ProbePoint point) => $"x {Text(point.XMillimetres, "0.#")}, y {Text(point.YMillimetres, "0.#")} mm";

    private static string Height(double millimetres, bool isFine) => $"{Figure(millimetres, isFine)} {(isFine ? "µm" : "mm")}";

    private static string Figure(double millimetres, bool isFine) => isFine ? Text(1000 * millimetres, "0.#") : Text(millimetres, "0.###");

    // A figure that rounds to nothing bears no sign.
    private static string Text(double value, string form) => value.ToString(form, CultureInfo.InvariantCulture) is "-0" ? "0" : value.ToString(form, CultureInfo.InvariantCulture).Replace('-', '−');
}
