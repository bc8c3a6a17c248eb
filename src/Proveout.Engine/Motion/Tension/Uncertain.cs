namespace Proveout.Engine.Motion;

/// <summary>A figure with its standard uncertainty, in the same unit (JCGM 100:2008, 2.3.1).</summary>
/// <param name="Value">Best estimate.</param>
/// <param name="Standard">Standard uncertainty.</param>
public readonly record struct Uncertain(double Value, double Standard)
{
    /// <summary>Coverage factor of every expanded uncertainty here: about 95 % for a nearly normal figure (JCGM 100:2008, 6.3.3).</summary>
    public const double CoverageFactor = 2;

    /// <summary>Expanded uncertainty.</summary>
    public double Expanded => CoverageFactor * Standard;

    /// <summary>Standard uncertainty as a share of the value.</summary>
    public double Relative => Standard / Math.Abs(Value);

    /// <summary>A figure known only to lie within a half-width, all places equally likely (JCGM 100:2008, 4.3.7).</summary>
    public static Uncertain Within(double value, double halfWidth) => new(value, halfWidth / Math.Sqrt(3));

    /// <summary>A figure of which the expanded uncertainty is stated.</summary>
    public static Uncertain WithExpanded(double value, double expanded) => new(value, expanded / CoverageFactor);

    /// <summary>Combines independent contributions (JCGM 100:2008, equation 10): each a sensitivity times a standard uncertainty.</summary>
    public static double Combine(params ReadOnlySpan<double> contributions)
    {
        var sum = 0.0;
        foreach (var contribution in contributions)
            sum += contribution * contribution;
        return Math.Sqrt(sum);
    }
}
