namespace Proveout.Engine.Motion;

/// <summary>What each measure should read by the quantities of the machine and by the errors that the calliper keeps.</summary>
internal sealed class PieceModel
{
    private const int Quantities = 10;
    private const double Step = 1e-6;

    /// <summary>Index of what the calliper shows when it should show nothing, in mm.</summary>
    public const int Zero = Quantities;

    /// <summary>Index of what its inside jaws show besides, in mm.</summary>
    public const int Jaws = Quantities + 1;

    /// <summary>Index of what it shows too much, as a share; warmth of piece and calliper is in it.</summary>
    public const int Scale = Quantities + 2;

    private const int Count = Quantities + 3;

    private PieceModel(IReadOnlyList<int> unknowns) => Unknowns = unknowns;

    /// <summary>Which unknowns the measures hang on, by index.</summary>
    public IReadOnlyList<int> Unknowns { get; }

    /// <summary>The model of some measures: an unknown that none of them hangs on is left out.</summary>
    public static PieceModel Of(IReadOnlyList<PieceMeasure> measures)
    {
        var whole = new PieceModel([.. Enumerable.Range(0, Count)]);
        var start = new double[Count];
        double[][] gradients = [.. measures.Select(measure => whole.Gradient(measure, start))];
        return new([.. whole.Unknowns.Where(unknown => gradients.Any(gradient => Math.Abs(gradient[unknown]) > Step))]);
    }

    /// <summary>What a measure reads.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="values">The unknowns of the model, in its order.</param>
    public double Length(PieceMeasure measure, IReadOnlyList<double> values)
    {
        var all = new double[Count];
        foreach (var (index, unknown) in Unknowns.Index())
            all[unknown] = values[index];
        var distortion = new PieceDistortion(
            1 + all[(int)PieceQuantity.ScaleX], 1 + all[(int)PieceQuantity.ScaleY], 1 + all[(int)PieceQuantity.ScaleZ],
            all[(int)PieceQuantity.SkewXY], all[(int)PieceQuantity.SkewXZ], all[(int)PieceQuantity.SkewYZ]);
        var growth = all[(int)PieceQuantity.Walls + (int)measure.Growth];
        return (distortion.Between(measure.Facing, measure.NominalMm) * (1 + all[Scale])) + (measure.GrowthSign * growth) + all[Zero] + (measure.Grip == PieceGrip.Inside ? all[Jaws] : 0);
    }

    /// <summary>How much a measure changes for one unit of each unknown.</summary>
    public double[] Gradient(PieceMeasure measure, IReadOnlyList<double> values)
    {
        var moved = values.ToArray();
        var gradient = new double[values.Count];
        for (var index = 0; index < gradient.Length; index++)
        {
            moved[index] = values[index] + Step;
            var above = Length(measure, moved);
            moved[index] = values[index] - Step;
            gradient[index] = (above - Length(measure, moved)) / (2 * Step);
            moved[index] = values[index];
        }

        return gradient;
    }
}
