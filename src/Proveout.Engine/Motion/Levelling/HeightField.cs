namespace Proveout.Engine.Motion;

/// <summary>Heights of a plate on a lattice, for lines of equal height and for pictures; not a number where no points lie around.</summary>
/// <remarks>Between the points of a lattice heights are taken as bilinear, between scattered points as linear over Delaunay's triangles.</remarks>
public sealed class HeightField
{
    // Points nearer than this are the same place.
    private const double SamePlaceMillimetres = 0.5;
    private const int MostScattered = 1500;
    private const int ScatteredSteps = 24;

    private readonly double[] _heights;

    private HeightField(double[] xs, double[] ys, double[] heights, bool isInterpolated) => (Xs, Ys, _heights, IsInterpolated) = (xs, ys, heights, isInterpolated);

    /// <summary>Places along x, rising, in mm.</summary>
    public IReadOnlyList<double> Xs { get; }

    /// <summary>Places along y, rising, in mm.</summary>
    public IReadOnlyList<double> Ys { get; }

    /// <summary>True when the points were scattered, so that the lattice is not where they were probed.</summary>
    public bool IsInterpolated { get; }

    /// <summary>Height at a crossing of the lattice, in mm.</summary>
    public double At(int column, int row) => _heights[(row * Xs.Count) + column];

    /// <summary>The field of points; null when they are scattered and too many.</summary>
    public static HeightField? Of(IReadOnlyList<ProbePoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var xs = Distinct(points.Select(point => point.XMillimetres));
        var ys = Distinct(points.Select(point => point.YMillimetres));
        return OnLattice(points, xs, ys) ?? (points.Count > MostScattered ? null : Scattered(points));
    }

    /// <summary>The same heights with every cell divided, so that lines in it bend as the bilinear surface does.</summary>
    /// <param name="parts">Parts of each cell each way.</param>
    public HeightField Divided(int parts)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(parts, 1);
        double[] columns = [.. Enumerable.Range(0, ((Xs.Count - 1) * parts) + 1).Select(step => (double)step / parts)];
        double[] rows = [.. Enumerable.Range(0, ((Ys.Count - 1) * parts) + 1).Select(step => (double)step / parts)];
        return Sampled(columns, rows);
    }

    /// <summary>The same heights at no more than some places each way; the field itself when it has no more.</summary>
    public HeightField Thinned(int most)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 2);
        return Xs.Count <= most && Ys.Count <= most ? this : Sampled(Spread(Xs.Count, most), Spread(Ys.Count, most));
    }

    private static double[] Spread(int count, int most) =>
        [.. Enumerable.Range(0, Math.Min(count, most)).Select(step => (double)step * (count - 1) / (Math.Min(count, most) - 1))];

    private HeightField Sampled(double[] columns, double[] rows) => new(
        [.. columns.Select(column => Between(Xs, column))],
        [.. rows.Select(row => Between(Ys, row))],
        [.. from row in rows from column in columns select Bilinear(column, row)],
        IsInterpolated);

    private static double Between(IReadOnlyList<double> places, double at)
    {
        var cell = Math.Min((int)at, places.Count - 2);
        return places[cell] + ((at - cell) * (places[cell + 1] - places[cell]));
    }

    private double Bilinear(double column, double row)
    {
        var (left, front) = (Math.Min((int)column, Xs.Count - 2), Math.Min((int)row, Ys.Count - 2));
        var (u, v) = (column - left, row - front);
        return Mix(v, () => Mix(u, () => At(left, front), () => At(left + 1, front)), () => Mix(u, () => At(left, front + 1), () => At(left + 1, front + 1)));
    }

    // A height that counts for nothing must not spoil the mix by not being a number.
    private static double Mix(double share, Func<double> near, Func<double> far) => share == 0 ? near() : share == 1 ? far() : ((1 - share) * near()) + (share * far());

    private static double[] Distinct(IEnumerable<double> places)
    {
        List<List<double>> groups = [];
        foreach (var place in places.Order())
            if (groups.Count > 0 && place - groups[^1][^1] < SamePlaceMillimetres)
                groups[^1].Add(place);
            else
                groups.Add([place]);
        return [.. groups.Select(group => group.Average())];
    }

    // A place probed several times counts with its mean.
    private static HeightField? OnLattice(IReadOnlyList<ProbePoint> points, double[] xs, double[] ys)
    {
        if (xs.Length < 2 || ys.Length < 2 || (long)xs.Length * ys.Length > points.Count)
            return null;
        var cells = points.ToLookup(point => (Nearest(ys, point.YMillimetres) * xs.Length) + Nearest(xs, point.XMillimetres), point => point.HeightMillimetres);
        return cells.Count < xs.Length * ys.Length
            ? null
            : new HeightField(xs, ys, [.. Enumerable.Range(0, xs.Length * ys.Length).Select(cell => cells[cell].Average())], isInterpolated: false);
    }

    private static int Nearest(double[] places, double place)
    {
        var index = Array.BinarySearch(places, place) is >= 0 and var found ? found : ~Array.BinarySearch(places, place);
        return index == places.Length || (index > 0 && place - places[index - 1] < places[index] - place) ? index - 1 : index;
    }

    private static HeightField Scattered(IReadOnlyList<ProbePoint> points)
    {
        var mesh = new PointMesh(points);
        var (left, right) = (points.Min(point => point.XMillimetres), points.Max(point => point.XMillimetres));
        var (front, back) = (points.Min(point => point.YMillimetres), points.Max(point => point.YMillimetres));
        double[] xs = [.. Enumerable.Range(0, ScatteredSteps + 1).Select(step => left + (step * (right - left) / ScatteredSteps))];
        double[] ys = [.. Enumerable.Range(0, ScatteredSteps + 1).Select(step => front + (step * (back - front) / ScatteredSteps))];
        return new HeightField(xs, ys, [.. from y in ys from x in xs select mesh.HeightAt(x, y)], isInterpolated: true);
    }
}
