using Proveout.Engine.Numerics;

namespace Proveout.Engine.Motion;

/// <summary>A result with everything that makes it uncertain (JCGM 100:2008, 5.1.2 and annex G).</summary>
/// <param name="Value">Best estimate.</param>
/// <param name="Lines">Independent causes.</param>
public sealed record UncertaintyBudget(double Value, IReadOnlyList<BudgetLine> Lines)
{
    /// <summary>Share of cases in which the truth should lie within the expanded uncertainty.</summary>
    public const double Share = 0.95;

    // Beyond it Student's t and the normal distribution agree to four digits.
    private const double ManyDegrees = 10_000;

    // Nobody measures a piece more often.
    private const int MostTimes = 100;

    /// <summary>Combined standard uncertainty (equation 10).</summary>
    public double Standard => Math.Sqrt(Lines.Sum(line => line.Contribution * line.Contribution));

    /// <summary>Effective degrees of freedom (Welch and Satterthwaite; equation G.2b).</summary>
    public double EffectiveDegrees
    {
        get
        {
            var sum = Lines.Sum(line => Math.Pow(line.Contribution, 4) / line.Degrees);
            return sum > 0 ? Math.Pow(Standard, 4) / sum : double.PositiveInfinity;
        }
    }

    /// <summary>Factor from the standard to the expanded uncertainty at 95 %.</summary>
    public double Factor => FactorAt(Share);

    /// <summary>Expanded uncertainty at 95 %.</summary>
    public double Expanded => Factor * Standard;

    /// <summary>True when the value differs from another by more than its expanded uncertainty: a test at 95 %, both sides.</summary>
    public bool DiffersFrom(double other) => Math.Abs(Value - other) > Expanded;

    /// <summary>Factor for a share of cases, by the next lower whole number of degrees (G.4.1).</summary>
    public double FactorAt(double share) => StudentT.Factor(share, Math.Clamp(Math.Floor(EffectiveDegrees + 1e-9), 1, ManyDegrees));

    /// <summary>The same with everything measured several times over: what scatters gets smaller, what all readings share stays.</summary>
    public UncertaintyBudget Repeated(int times) => new(
        Value, [.. Lines.Select(line => double.IsFinite(line.Degrees) ? line with { Standard = line.Standard / Math.Sqrt(times), Degrees = line.Degrees * times } : line)]);

    /// <summary>How many times over everything must be measured until the expanded uncertainty is below a margin; null when no number of times does it.</summary>
    public int? TimesToReach(double margin)
    {
        for (var times = 1; times <= MostTimes; times++)
            if (Repeated(times).Expanded < margin)
                return times;
        return null;
    }

    /// <summary>The same causes acting on a result that follows from this one.</summary>
    /// <param name="value">That result.</param>
    /// <param name="slope">How much it changes for one unit of this one.</param>
    public UncertaintyBudget Through(double value, double slope) => new(value, [.. Lines.Select(line => line with { Sensitivity = line.Sensitivity * slope })]);
}
