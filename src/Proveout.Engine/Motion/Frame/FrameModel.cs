namespace Proveout.Engine.Motion;

/// <summary>What each reading should be when the points are at given places.</summary>
internal sealed class FrameModel
{
    private readonly IReadOnlyList<FramePoint> _points;
    private readonly (double X, double Y) _along;

    public FrameModel(IReadOnlyList<FramePoint> points, IReadOnlyList<MeasuredDistance> distances, IReadOnlyList<MeasuredCorner> corners)
    {
        _points = points;
        var (dx, dy) = (points[1].XMillimetres - points[0].XMillimetres, points[1].YMillimetres - points[0].YMillimetres);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        _along = (dx / length, dy / length);
        Start = [length, .. points.Skip(2).SelectMany(point => new[] { point.XMillimetres, point.YMillimetres })];
        Readings =
        [
            .. distances.Select(distance => new FrameReading(distance.Name, distance.Millimetres, DistanceOf(IndexOf(distance.From), IndexOf(distance.To)))),
            .. corners.Select(corner => new FrameReading(corner.Name, corner.Angle, CornerOf(IndexOf(corner.Corner), IndexOf(corner.First), IndexOf(corner.Second)))),
        ];
    }

    public double[] Start { get; }

    public FrameReading[] Readings { get; }

    public int IndexOf(string point) => _points.ToList().FindIndex(each => each.Name == point);

    public (double X, double Y) Place(double[] unknowns, int point) => point switch
    {
        0 => (_points[0].XMillimetres, _points[0].YMillimetres),
        1 => (_points[0].XMillimetres + (unknowns[0] * _along.X), _points[0].YMillimetres + (unknowns[0] * _along.Y)),
        _ => (unknowns[(2 * point) - 3], unknowns[(2 * point) - 2]),
    };

    public IReadOnlyList<(double X, double Y)> Places(double[] unknowns) => [.. Enumerable.Range(0, _points.Count).Select(point => Place(unknowns, point))];

    // Central differences: the figures are smooth over metres, so that a micrometre leaves ten digits.
    public static double[] Gradient(double[] unknowns, Func<double[], double> figure, double step)
    {
        var gradient = new double[unknowns.Length];
        for (var index = 0; index < unknowns.Length; index++)
        {
            double[] up = [.. unknowns];
            double[] down = [.. unknowns];
            up[index] += step;
            down[index] -= step;
            gradient[index] = (figure(up) - figure(down)) / (2 * step);
        }

        return gradient;
    }

    private Func<double[], double> DistanceOf(int from, int to) => unknowns => PlaneAngles.Distance(Place(unknowns, from), Place(unknowns, to));

    private Func<double[], double> CornerOf(int corner, int first, int second) =>
        unknowns => PlaneAngles.BeyondRight(Place(unknowns, corner), Place(unknowns, first), Place(unknowns, second));
}
