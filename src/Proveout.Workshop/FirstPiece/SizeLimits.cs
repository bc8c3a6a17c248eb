using Proveout.Engine.Motion;

namespace Proveout.Workshop;

/// <summary>How lengths of a test piece are judged.</summary>
/// <param name="Scale">What a length may be off, as a share.</param>
/// <param name="Skew">What an axis may lean, for each mm.</param>
/// <param name="Growth">What walls and heights may be off, in mm.</param>
/// <param name="Shrinkage">Shrinkage of the material as a share; null when it is not known.</param>
/// <param name="Steps">Steps for each mm of X, Y and Z as set now; null where not given.</param>
internal sealed record SizeLimits(double Scale, double Skew, double Growth, Uncertain? Shrinkage, IReadOnlyList<double?> Steps)
{
    public static SizeLimits Of(IReadOnlyDictionary<string, string> texts, List<Engine.Machine.Diagnostic> problems)
    {
        TypedFigures typed = new(texts);
        var shrinkage = typed.Read(PieceFields.Shrinkage);
        SizeLimits limits = new(
            typed.Require(PieceFields.ScaleLimit) / 100,
            typed.Require(PieceFields.SkewLimit) / 100,
            typed.Require(PieceFields.GrowthLimit),
            shrinkage is { } share ? Uncertain.Within(share / 100, typed.Require(PieceFields.ShrinkageError) / 100) : null,
            [.. PieceFields.AxisSteps.Select(typed.Read)]);
        problems.AddRange(typed.Problems);
        return limits;
    }

    /// <summary>What is claimed of a quantity; shrinkage of the material is taken off scales first.</summary>
    public PieceClaim Claim(PieceFit fit, PieceQuantity quantity)
    {
        var budget = fit.Of(quantity);
        return quantity switch
        {
            PieceQuantity.ScaleX or PieceQuantity.ScaleY or PieceQuantity.ScaleZ => new(WithoutShrinkage(budget), Scale),
            PieceQuantity.SkewXY or PieceQuantity.SkewXZ or PieceQuantity.SkewYZ => new(budget, Skew),
            _ => new(budget, Growth),
        };
    }

    private UncertaintyBudget WithoutShrinkage(UncertaintyBudget scale)
    {
        if (Shrinkage is not { } share)
            return scale;
        var left = 1 - share.Value;
        var moved = (1 + scale.Value) / left;
        var through = scale.Through(moved - 1, 1 / left);
        return through with { Lines = [.. through.Lines, new BudgetLine("shrinkage of the material", share.Standard, moved / left)] };
    }
}
