using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>
/// Scales, skews and growth of a test piece by all readings together: least squares over outside and inside lengths, in which errors that the
/// calliper keeps are unknowns too, held by what is known of them. How much a reading scatters is taken from how much the readings disagree.
/// </summary>
public sealed class PieceFit
{
    private const int MostRounds = 40;

    // Fewer readings that check each other do not tell how much they scatter.
    private const int LeastDegrees = 3;

    private readonly PieceModel _model;
    private readonly PieceDoubt _doubt;
    private readonly IReadOnlyList<PieceReading> _readings;
    private readonly double[] _values;
    private readonly LinearFit _fit;

    private PieceFit(PieceModel model, PieceDoubt doubt, IReadOnlyList<PieceReading> readings, double[] values, LinearFit fit, double spread, double degrees) =>
        (_model, _doubt, _readings, _values, _fit, SpreadMm, Degrees) = (model, doubt, readings, values, fit, spread, degrees);

    /// <summary>Standard deviation of a length by which the readings disagree, in mm: reading and form of the piece together.</summary>
    public double SpreadMm { get; }

    /// <summary>Degrees of freedom of that.</summary>
    public double Degrees { get; }

    /// <summary>True when too few readings check each other, so that the stated repeatability stands in.</summary>
    public bool IsStated => Redundancy(_fit, _readings.Count) < LeastDegrees;

    /// <summary>What the readings tell of.</summary>
    public IReadOnlyList<PieceQuantity> Quantities => [.. _model.Unknowns.Where(unknown => unknown < PieceModel.Zero).Select(unknown => (PieceQuantity)unknown)];

    /// <summary>Number of the measure that contradicts the others beyond chance; null when none does (outlier test on deleted residuals: Cook and Weisberg, Residuals and Influence in Regression, 1982).</summary>
    public int? Odd
    {
        get
        {
            var degrees = Redundancy(_fit, _readings.Count);
            if (degrees < LeastDegrees + 1)
                return null;
            var worst = Enumerable.Range(0, _readings.Count).MaxBy(index => Math.Abs(Deleted(index, degrees)));
            return Math.Abs(Deleted(worst, degrees)) > StudentT.Factor(1 - (Grubbs.Significance / _readings.Count), Math.Floor(degrees - 1)) ? _readings[worst].Measure.Number : null;
        }
    }

    /// <summary>A quantity with the causes of its doubt.</summary>
    public UncertaintyBudget Of(PieceQuantity quantity) => Along(Only(quantity));

    /// <summary>One quantity less another; what both share cancels.</summary>
    public UncertaintyBudget Difference(PieceQuantity one, PieceQuantity other) => Along([.. Only(one).Zip(Only(other), (a, b) => a - b)]);

    /// <summary>Mean of two quantities.</summary>
    public UncertaintyBudget Mean(PieceQuantity one, PieceQuantity other) => Along([.. Only(one).Zip(Only(other), (a, b) => (a + b) / 2)]);

    /// <summary>Covariance of two quantities (JCGM 100:2008, 5.2).</summary>
    public double Covariance(PieceQuantity one, PieceQuantity other) => _fit.Cofactors[IndexOf(one), IndexOf(other)];

    /// <summary>What a measure should read after some quantities are corrected.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="corrected">The quantities, each with what is then left of it: 0, or the shrinkage that is taken care of elsewhere.</param>
    public UncertaintyBudget After(PieceMeasure measure, IReadOnlyDictionary<PieceQuantity, double> corrected)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(corrected);
        double[] values = [.. _values.Select((value, index) => corrected.GetValueOrDefault((PieceQuantity)_model.Unknowns[index], value))];
        var known = Along(_model.Gradient(measure, _values));
        return new(_model.Length(measure, values), [.. known.Lines, new BudgetLine("the new reading", SpreadMm, 1, Degrees)]);
    }

    /// <summary>Fits.</summary>
    /// <param name="piece">The piece, to say which further measures would decide when the readings do not.</param>
    /// <param name="readings">A reading for each measure that was taken.</param>
    /// <param name="doubt">What makes them doubtful.</param>
    public static (PieceFit? Fit, string? Problem) Of(TestPiece piece, IReadOnlyList<PieceReading> readings, PieceDoubt doubt)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(doubt);
        if (PieceProblems.Of(piece, readings) is { } problem)
            return (null, problem);
        var model = PieceModel.Of([.. readings.Select(reading => reading.Measure)]);
        var values = new double[model.Unknowns.Count];
        var (spread, degrees) = (Math.Max(doubt.Repeat, Floor(doubt)), (double)PieceDoubt.StatedDegrees);
        for (var round = 0; round < MostRounds; round++)
        {
            if (Step(model, readings, doubt, values, spread) is not { } fit)
                return (null, PieceProblems.Undecided(piece, readings));
            values = [.. values.Zip(fit.Values, (value, change) => value + change)];
            var (next, free) = SpreadOf(fit, readings.Count, doubt);
            var isSettled = Math.Abs(next - spread) < 1e-9 && fit.Values.All(change => Math.Abs(change) < 1e-10);
            (spread, degrees) = (next, free);
            if (isSettled)
                return (new(model, doubt, readings, values, fit, spread, degrees), null);
        }

        return (null, "The readings contradict each other so much that no piece fits them. See that each stands at the number that the drawing gives it.");
    }

    private static LinearFit? Step(PieceModel model, IReadOnlyList<PieceReading> readings, PieceDoubt doubt, double[] values, double spread)
    {
        List<double[]> design = [.. readings.Select(reading => model.Gradient(reading.Measure, values))];
        List<double> open = [.. readings.Select(reading => reading.Millimetres - model.Length(reading.Measure, values))];
        List<double> standards = [.. readings.Select(_ => spread)];
        foreach (var (index, unknown) in model.Unknowns.Index().Where(each => each.Item >= PieceModel.Zero))
        {
            design.Add([.. Enumerable.Range(0, values.Length).Select(column => column == index ? 1.0 : 0)]);
            open.Add(-values[index]);
            standards.Add(doubt.StandardOf(unknown));
        }

        return LeastSquares.Fit(design, open.ToArray(), standards.ToArray());
    }

    private static (double Spread, double Degrees) SpreadOf(LinearFit fit, int readings, PieceDoubt doubt)
    {
        var degrees = Redundancy(fit, readings);
        var stated = Math.Max(doubt.Repeat, Floor(doubt));
        var found = degrees > 0.5 ? Math.Sqrt(fit.Residuals.Take(readings).Sum(residual => residual * residual) / degrees) : 0;
        return degrees >= LeastDegrees ? (Math.Max(found, Floor(doubt)), degrees) : (Math.Max(found, stated), PieceDoubt.StatedDegrees);
    }

    private static double Redundancy(LinearFit fit, int readings) => fit.Redundancies.Take(readings).Sum();

    // What the step of the display hides however well the readings agree.
    private static double Floor(PieceDoubt doubt) => Math.Max(1e-6, doubt.Calliper.StepMm / Math.Sqrt(12));

    private double Deleted(int index, double degrees)
    {
        var share = _fit.Redundancies[index];
        if (share < 0.01)
            return 0;
        var square = _fit.Residuals[index] * _fit.Residuals[index] / share;
        var all = _fit.Residuals.Take(_readings.Count).Sum(residual => residual * residual);
        var others = Math.Max(Math.Sqrt(Math.Max(0, all - square) / (degrees - 1)), Floor(_doubt));
        return _fit.Residuals[index] / (others * Math.Sqrt(share));
    }

    private int IndexOf(PieceQuantity quantity) => _model.Unknowns.Index().First(each => each.Item == (int)quantity).Index;

    private double[] Only(PieceQuantity quantity)
    {
        var only = new double[_values.Length];
        only[IndexOf(quantity)] = 1;
        return only;
    }

    // With C = (JᵀJ/s² + P)⁻¹ the variance gᵀCg is that of the readings plus that of what the calliper keeps, gᵀC P Cg.
    private UncertaintyBudget Along(double[] gradient)
    {
        List<BudgetLine> kept = [];
        foreach (var (index, unknown) in _model.Unknowns.Index().Where(each => each.Item >= PieceModel.Zero))
        {
            var reach = Enumerable.Range(0, gradient.Length).Sum(row => gradient[row] * _fit.Cofactors[row, index]);
            kept.Add(new(CauseOf(unknown), Math.Abs(reach) / _doubt.StandardOf(unknown)));
        }

        var whole = _fit.StandardOf(gradient);
        var readings = Math.Sqrt(Math.Max(0, (whole * whole) - kept.Sum(line => line.Standard * line.Standard)));
        return new(gradient.Zip(_values, (share, value) => share * value).Sum(), [new("readings and form of the piece", readings, 1, Degrees), .. kept]);
    }

    private static string CauseOf(int unknown) => unknown switch
    {
        PieceModel.Zero => "zero of the calliper",
        PieceModel.Jaws => "inside jaws of the calliper",
        _ => "scale of the calliper, and warmth",
    };
}
