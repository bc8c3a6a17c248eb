namespace Proveout.Engine.Motion;

/// <summary>Corners in space as unknowns: how far each lies off the drawing, and how the slab lies under them.</summary>
internal sealed class SpaceModel
{
    private const double StepMillimetres = 1e-3;
    private readonly IReadOnlyList<SpacePoint> _points;
    private readonly bool _hasSlab;

    public SpaceModel(IReadOnlyList<SpacePoint> points, IReadOnlyList<MeasuredDistance> distances)
    {
        _points = points;
        _hasSlab = points.Any(point => point.Height is not null);
        Readings =
        [
            .. distances.Select(distance => DistanceOf(distance, IndexOf(distance.From), IndexOf(distance.To))),
            .. points.Index().Where(point => point.Item.Height is not null).Select(point => HeightOf(point.Item, point.Index)),
        ];
    }

    /// <summary>The readings, each with what the unknowns give for it.</summary>
    public IReadOnlyList<SpaceReading> Readings { get; }

    public int Unknowns => (3 * _points.Count) + (_hasSlab ? 3 : 0);

    public int IndexOf(string name) => _points.Index().First(point => point.Item.Name == name).Index;

    public (double X, double Y, double Z) Drawn(int point) => (_points[point].XMillimetres, _points[point].YMillimetres, _points[point].ZMillimetres);

    public static (double X, double Y, double Z) Off(double[] unknowns, int point) => (unknowns[3 * point], unknowns[(3 * point) + 1], unknowns[(3 * point) + 2]);

    /// <summary>
    /// Six rows that keep the frame, as a whole, where the drawing has it: distances say nothing about where it stands and how it is turned. The sum of the
    /// offsets is nothing, and so is the sum of their moments (inner constraints of a free network: Meissl 1962, from memory).
    /// </summary>
    public IEnumerable<double[]> Datum()
    {
        var (x, y, z) = (_points.Average(point => point.XMillimetres), _points.Average(point => point.YMillimetres), _points.Average(point => point.ZMillimetres));
        var size = _points.Max(point => Uncertain.Combine(point.XMillimetres - x, point.YMillimetres - y, point.ZMillimetres - z));
        yield return Row(_ => (1, 0, 0));
        yield return Row(_ => (0, 1, 0));
        yield return Row(_ => (0, 0, 1));
        yield return Row(point => (0, -(point.ZMillimetres - z) / size, (point.YMillimetres - y) / size));
        yield return Row(point => ((point.ZMillimetres - z) / size, 0, -(point.XMillimetres - x) / size));
        yield return Row(point => (-(point.YMillimetres - y) / size, (point.XMillimetres - x) / size, 0));
    }

    /// <summary>How a figure of the unknowns changes with each of them.</summary>
    public static double[] Gradient(double[] at, Func<double[], double> figure) => FrameModel.Gradient(at, figure, StepMillimetres);

    private double[] Row(Func<SpacePoint, (double X, double Y, double Z)> coefficients) =>
        [.. _points.Select(coefficients).SelectMany(each => new[] { each.X, each.Y, each.Z }), .. new double[_hasSlab ? 3 : 0]];

    // A distance grows by what its ends move apart along it.
    private SpaceReading DistanceOf(MeasuredDistance distance, int one, int other) => new(distance.Name, distance.Millimetres, unknowns =>
    {
        var ((ax, ay, az), (bx, by, bz)) = (Place(unknowns, one), Place(unknowns, other));
        var length = Uncertain.Combine(ax - bx, ay - by, az - bz);
        var row = new double[Unknowns];
        foreach (var (axis, share) in new[] { (bx - ax) / length, (by - ay) / length, (bz - az) / length }.Index())
            (row[(3 * one) + axis], row[(3 * other) + axis]) = (-share, share);
        return (length, row);
    });

    // The slab may lie at any height and aslant under the frame as drawn; its tilt is counted in mm for each m.
    private SpaceReading HeightOf(SpacePoint corner, int point) => new($"height of {corner.Name}", corner.Height!.Value, unknowns =>
    {
        var (x, y) = (corner.XMillimetres / 1000, corner.YMillimetres / 1000);
        var slab = 3 * _points.Count;
        var row = new double[Unknowns];
        (row[(3 * point) + 2], row[slab], row[slab + 1], row[slab + 2]) = (1, 1, x, y);
        return (corner.ZMillimetres + unknowns[(3 * point) + 2] + unknowns[slab] + (x * unknowns[slab + 1]) + (y * unknowns[slab + 2]), row);
    });

    private (double X, double Y, double Z) Place(double[] unknowns, int point)
    {
        var ((x, y, z), (dx, dy, dz)) = (Drawn(point), Off(unknowns, point));
        return (x + dx, y + dy, z + dz);
    }
}
