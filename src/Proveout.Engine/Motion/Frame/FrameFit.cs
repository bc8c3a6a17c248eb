using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>
/// Where the points of a frame are by all measurements together: least squares over redundant distances and angles (Gauss-Newton), each with
/// its own uncertainty. The first point stays, and the second stays on the drawn line from it: distances say nothing about where a frame stands.
/// </summary>
public sealed class FrameFit
{
    private const int MostSteps = 50;
    private const double StepMillimetres = 1e-3;

    // Of 1000 sound readings one lies beyond (W. Baarda, A testing procedure for use in geodetic networks, 1968).
    private const double LargestSoundResidual = 3.29;

    private readonly LinearFit _fit;
    private readonly double[] _unknowns;

    private FrameFit(FrameModel model, double[] unknowns, LinearFit fit) => (Model, _unknowns, _fit) = (model, unknowns, fit);

    internal FrameModel Model { get; }

    /// <summary>Readings less unknowns: how many readings the others check.</summary>
    public int Redundancy => _fit.Degrees;

    /// <summary>Residual of each reading in units of its stated uncertainty; about 1 when those are right; not a number without redundancy.</summary>
    public double Scatter => _fit.Scatter;

    /// <summary>Each reading less what the fitted frame gives, in the order of distances and then corners: mm, and rad for corners.</summary>
    public IReadOnlyList<double> Residuals => _fit.Residuals;

    /// <summary>Name of the reading that contradicts the others most, beyond chance; null when none does.</summary>
    public string? Contradiction
    {
        get
        {
            var worst = Enumerable.Range(0, _fit.Residuals.Length).MaxBy(Normalised);
            return Redundancy > 0 && Normalised(worst) > LargestSoundResidual ? Model.Readings[worst].Name : null;
        }
    }

    /// <summary>True when each reading is checked by others, so that a wrong one shows.</summary>
    public bool IsChecked => _fit.Redundancies.All(share => share > 0.01);

    /// <summary>The fitted place of a point.</summary>
    public (double X, double Y) PlaceOf(string point) => Model.Place(_unknowns, Model.IndexOf(point));

    /// <summary>A figure that follows from the places, with its uncertainty by the readings (JCGM 100:2008, 5.1); widened when the readings disagree more than they may.</summary>
    public Uncertain Of(Func<IReadOnlyList<(double X, double Y)>, double> figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var gradient = FrameModel.Gradient(_unknowns, unknowns => figure(Model.Places(unknowns)), StepMillimetres);
        var widening = Redundancy > 0 ? Math.Max(1, Scatter) : 1;
        return new(figure(Model.Places(_unknowns)), widening * _fit.StandardOf(gradient));
    }

    /// <summary>Fits a frame.</summary>
    public static FrameFitResult Fit(IReadOnlyList<FramePoint> points, IReadOnlyList<MeasuredDistance> distances, IReadOnlyList<MeasuredCorner> corners)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(distances);
        ArgumentNullException.ThrowIfNull(corners);
        if (FrameProblems.Of(points, distances, corners) is { } problem)
            return new(null, problem);
        var model = new FrameModel(points, distances, corners);
        double[] standards = [.. model.Readings.Select(reading => reading.Observed.Standard)];
        var unknowns = model.Start;
        LinearFit? fit = null;
        for (var step = 0; step < MostSteps; step++)
        {
            var at = unknowns;
            double[][] design = [.. model.Readings.Select(reading => FrameModel.Gradient(at, reading.Predicted, StepMillimetres))];
            double[] open = [.. model.Readings.Select(reading => reading.Observed.Value - reading.Predicted(at))];
            fit = LeastSquares.Fit(design, open, standards);
            if (fit is null)
                return new(null, FrameProblems.NotDetermined(points, distances, corners));
            unknowns = [.. unknowns.Zip(fit.Values, (value, change) => value + change)];
            if (fit.Values.All(change => Math.Abs(change) < 1e-9))
                return new(new FrameFit(model, unknowns, fit), null);
        }

        return new(null, "The readings contradict each other so much that no frame fits them. Measure every side and diagonal again, and see that each is between the points that its name says.");
    }

    private double Normalised(int reading) =>
        _fit.Redundancies[reading] > 0.01
            ? Math.Abs(_fit.Residuals[reading]) / (Model.Readings[reading].Observed.Standard * Math.Sqrt(_fit.Redundancies[reading]))
            : 0;
}
