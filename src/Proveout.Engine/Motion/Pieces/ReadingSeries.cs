namespace Proveout.Engine.Motion;

/// <summary>Readings of one thing.</summary>
/// <param name="Values">What was read.</param>
/// <param name="Step">Step of the scale or display, in the same unit.</param>
public sealed record ReadingSeries(IReadOnlyList<double> Values, double Step)
{
    /// <summary>Their mean.</summary>
    public double Mean => Values.Average();

    /// <summary>Degrees of freedom of their spread.</summary>
    public int Degrees => Values.Count - 1;

    /// <summary>Experimental standard deviation (JCGM 100:2008, equation 4); 0 for a single reading.</summary>
    public double Deviation => Degrees > 0 ? Math.Sqrt(Values.Sum(value => (value - Mean) * (value - Mean)) / Degrees) : 0;

    /// <summary>What a reading is off at random: its deviation, and no less than its step explains (uniform: JCGM 100:2008, F.2.2.1).</summary>
    public double Spread => Math.Max(Deviation, Step / Math.Sqrt(12));

    /// <summary>The mean's line in a budget.</summary>
    /// <param name="cause">What makes the readings differ.</param>
    public BudgetLine MeanLine(string cause) => Deviation > Step / Math.Sqrt(12)
        ? new(cause, Deviation / Math.Sqrt(Values.Count), 1, Degrees)
        // All alike within the step: more of them do not refine what the step hides.
        : new($"{cause}, hidden in the step of the scale", Step / Math.Sqrt(12));
}
