using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>
/// Where the corners of a frame are in space by all tape readings and heights together: a free network, fitted by least squares (Gauss-Newton). It
/// names the corner that is out of place: the one without which the others lie nearest to the drawing.
/// </summary>
public sealed class SpaceFit
{
    private const int MostSteps = 50;

    // The datum is exact: beside the readings its rows must add nothing to any uncertainty.
    private const double DatumShare = 1e-4;

    // Of 1000 sound readings one lies beyond (W. Baarda, A testing procedure for use in geodetic networks, 1968).
    private const double LargestSoundResidual = 3.29;

    private readonly SpaceModel _model;
    private readonly IReadOnlyList<SpacePoint> _points;
    private readonly double[] _unknowns;
    private readonly LinearFit _fit;

    private SpaceFit(SpaceModel model, IReadOnlyList<SpacePoint> points, double[] unknowns, LinearFit fit) => (_model, _points, _unknowns, _fit) = (model, points, unknowns, fit);

    /// <summary>Readings less unknowns: how many readings the others check.</summary>
    public int Redundancy => _fit.Degrees;

    /// <summary>Residual of each reading in units of its stated uncertainty; about 1 when those are right; not a number without redundancy.</summary>
    public double Scatter => _fit.Scatter;

    /// <summary>How far each corner lies off the drawing, the frame as a whole laid on it.</summary>
    public IReadOnlyList<SpaceOffset> Offsets => [.. Enumerable.Range(0, _points.Count).Select(point => Offset(point, unknowns => SpaceModel.Off(unknowns, point)))];

    /// <summary>Name of the reading that contradicts the others most, beyond chance; null when none does.</summary>
    public string? Contradiction
    {
        get
        {
            var worst = Enumerable.Range(0, _model.Readings.Count).MaxBy(Normalised);
            return Redundancy > 0 && Normalised(worst) > LargestSoundResidual ? _model.Readings[worst].Name : null;
        }
    }

    /// <summary>The corner that is out of place, off where the others put it, and how far the others are then off at most; null when none is surely off.</summary>
    public (SpaceOffset Corner, double OthersMillimetres)? OutOfPlace
    {
        get
        {
            var found = Enumerable.Range(0, _points.Count).Select(Without).OfType<(SpaceOffset Corner, double Others)>()
                .Where(each => each.Corner.Distance.Value > each.Corner.Distance.Expanded).OrderBy(each => each.Others).ToArray();
            return found.Length > 0 ? (found[0].Corner, found[0].Others) : null;
        }
    }

    /// <summary>How far one of the first four corners stands off the plane of the other three, in mm; positive when the first and third are high; null below four.</summary>
    public Uncertain? Twist => _points.Count < 4 ? null : Of(unknowns =>
        Enumerable.Range(0, 4).Sum(point => (point % 2 == 0 ? 1 : -1) * (_points[point].ZMillimetres + SpaceModel.Off(unknowns, point).Z)));

    /// <summary>Fits a frame.</summary>
    /// <param name="points">Corners as drawn, the base's first four in order around it, with heights where measured.</param>
    /// <param name="distances">Tape readings between them.</param>
    public static SpaceFitResult Fit(IReadOnlyList<SpacePoint> points, IReadOnlyList<MeasuredDistance> distances)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(distances);
        if (FrameProblems.Of([.. points.Select(point => new FramePoint(point.Name, point.XMillimetres, point.YMillimetres))], distances, []) is { } problem)
            return new(null, problem);
        var model = new SpaceModel(points, distances);
        var unknowns = new double[model.Unknowns];
        for (var step = 0; step < MostSteps; step++)
        {
            if (Step(model, unknowns) is not { } fit)
                return new(null, SpaceProblems.NotDetermined(points, distances));
            unknowns = [.. unknowns.Zip(fit.Values, (value, change) => value + change)];
            if (fit.Values.All(change => Math.Abs(change) < 1e-8))
                return new(new SpaceFit(model, points, unknowns, fit), null);
        }

        return new(null, "The readings contradict each other so much that no frame fits them. Measure every side and diagonal again, and see that each is between the points that its name says.");
    }

    /// <summary>One step of Gauss-Newton: readings in the order given, then the datum; null when the readings leave something free.</summary>
    internal static LinearFit? Step(SpaceModel model, double[] at)
    {
        double[][] datum = [.. model.Datum()];
        var predicted = model.Readings.Select(reading => reading.At(at)).ToArray();
        return LeastSquares.Fit(
            [.. predicted.Select(each => each.Row), .. datum],
            [.. model.Readings.Zip(predicted, (reading, each) => reading.Observed.Value - each.Value), .. datum.Select(row => -row.Zip(at, (coefficient, value) => coefficient * value).Sum())],
            [.. model.Readings.Select(reading => reading.Observed.Standard), .. datum.Select(_ => DatumShare * model.Readings.Min(reading => reading.Observed.Standard))]);
    }

    // Linear in the offsets: they are small beside the frame.
    private (SpaceOffset Corner, double Others)? Without(int corner)
    {
        int[] others = [.. Enumerable.Range(0, _points.Count).Where(point => point != corner)];
        if (SpaceMove.Of(_model, others, _unknowns) is not { } move)
            return null;
        var offset = Offset(corner, unknowns => SpaceMove.Of(_model, others, unknowns)!.Value.Left(_model, unknowns, corner));
        return (offset, others.Max(point => move.Left(_model, _unknowns, point) is var (x, y, z) ? Uncertain.Combine(x, y, z) : 0));
    }

    private SpaceOffset Offset(int point, Func<double[], (double X, double Y, double Z)> off) =>
        new(_points[point].Name, Of(unknowns => off(unknowns).X), Of(unknowns => off(unknowns).Y), Of(unknowns => off(unknowns).Z));

    private Uncertain Of(Func<double[], double> figure)
    {
        var widening = Redundancy > 0 ? Math.Max(1, Scatter) : 1;
        return new(figure(_unknowns), widening * _fit.StandardOf(SpaceModel.Gradient(_unknowns, figure)));
    }

    private double Normalised(int reading) =>
        _fit.Redundancies[reading] > 0.01
            ? Math.Abs(_fit.Residuals[reading]) / (_model.Readings[reading].Observed.Standard * Math.Sqrt(_fit.Redundancies[reading]))
            : 0;
}
