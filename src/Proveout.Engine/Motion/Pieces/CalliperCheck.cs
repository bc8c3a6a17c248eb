namespace Proveout.Engine.Motion;

/// <summary>A calliper checked with its jaws closed and at a block of known length, held both ways.</summary>
/// <param name="Zero">What it shows closed, in mm.</param>
/// <param name="Length">What it shows too much at the block besides the zero, in mm; null without a block.</param>
/// <param name="Reversal">Readings held one way less those held the other way, in mm; null without both.</param>
/// <param name="Found">What follows for readings.</param>
public sealed record CalliperCheck(UncertaintyBudget Zero, UncertaintyBudget? Length, UncertaintyBudget? Reversal, Calliper Found)
{
    /// <summary>Checks.</summary>
    /// <param name="stated">What was known before: step, and the limits of what is not checked.</param>
    /// <param name="closed">Readings with the jaws closed.</param>
    /// <param name="block">Length of the block; null without.</param>
    /// <param name="one">Readings at the block.</param>
    /// <param name="other">Readings at the block, the calliper turned round; empty when it was not.</param>
    public static CalliperCheck Of(Calliper stated, IReadOnlyList<double> closed, Uncertain? block, IReadOnlyList<double> one, IReadOnlyList<double> other)
    {
        ArgumentNullException.ThrowIfNull(stated);
        ArgumentNullException.ThrowIfNull(closed);
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        ReadingSeries shut = new(closed, stated.StepMm);
        UncertaintyBudget zero = new(shut.Mean, [shut.MeanLine("closed readings"), Rounding(stated)]);
        var reversal = one.Count > 0 && other.Count > 0 ? Between(new(one, stated.StepMm), new(other, stated.StepMm)) : null;
        var length = block is { } known && one.Count > 0 ? AtBlock(stated, zero, known, one, other, reversal) : null;
        var scale = length is null ? stated.Scale : new Uncertain(length.Value / block!.Value.Value, length.Standard / block.Value.Value);
        return new(zero, length, reversal, stated with { Zero = new(zero.Value, zero.Standard), Scale = scale });
    }

    private static UncertaintyBudget Between(ReadingSeries one, ReadingSeries other) =>
        new(one.Mean - other.Mean, [one.MeanLine("readings one way"), other.MeanLine("readings the other way")]);

    private static UncertaintyBudget AtBlock(Calliper stated, UncertaintyBudget zero, Uncertain block, IReadOnlyList<double> one, IReadOnlyList<double> other, UncertaintyBudget? reversal)
    {
        ReadingSeries first = new(one, stated.StepMm);
        // Which way of holding is right nobody knows: the truth lies anywhere between both (uniform).
        var mean = other.Count > 0 ? (first.Mean + new ReadingSeries(other, stated.StepMm).Mean) / 2 : first.Mean;
        List<BudgetLine> lines = [first.MeanLine("readings at the block"), Rounding(stated), new("the block", block.Standard), new("zero", zero.Standard, 1, zero.EffectiveDegrees)];
        if (reversal is not null)
            lines.Add(new("the way of holding", Math.Abs(reversal.Value) / 2 / Math.Sqrt(3)));
        return new(mean - zero.Value - block.Value, lines);
    }

    private static BudgetLine Rounding(Calliper stated) => new("step of the display", stated.StepMm / Math.Sqrt(12));
}
