namespace Proveout.Engine.Electrical;

/// <summary>Every supply and rail gives what hangs on it: steady with headroom, while warming up, and with everything at work, in the warmth around it.</summary>
internal sealed class SupplyBudget : IReviewRule
{
    // A supply worked at four fifths lives, and bears what was forgotten: common practice.
    private const double Headroom = 0.2;

    public string Id => "supply-budget";

    public string Words => "what hangs on each supply and rail against what it gives, steady, warming up and at worst";

    public IEnumerable<Finding> Review(ReviewContext context) =>
        from reach in context.Supplies
        where !double.IsPositiveInfinity(reach.Supply.LimitAmperes)
        let sum = Sums.Of(context.Demands.On(reach))
        let bears = reach.Supply.LimitAmperes * Derated(context, reach.Supply)
        let usable = bears * (1 - (context.Settings.Headroom?.DecimalFractions ?? Headroom))
        where sum.Steady > usable || sum.WarmUp > bears || sum.Worst > bears
        select new Finding(
            Id,
            sum.Steady > bears || sum.WarmUp > bears ? FindingSeverity.Error : FindingSeverity.Warning,
            [.. context.Demands.On(reach).Select(demand => demand.Part).Prepend(reach.Supply.Part!.Designation).Distinct()],
            $"{reach.Supply.Name} gives {ReviewContext.Number(bears, 2)} A at {ReviewContext.Number(context.Ambient)} °C, {ReviewContext.Number(usable, 2)} A with headroom; asked of it are {ReviewContext.Number(sum.Steady, 2)} A steady, {ReviewContext.Number(sum.WarmUp, 2)} A while warming up, {ReviewContext.Number(sum.Worst, 2)} A with everything at work.",
            "Take a stronger supply, keep it cooler, or hang something on another one.",
            "common practice; derating from the part type")
        {
            Numbers =
            [
                new("gives", bears, "A"), new("usable", usable, "A"), new("steady", sum.Steady, "A"), new("warm-up", sum.WarmUp, "A"), new("worst", sum.Worst, "A"),
            ],
        };

    private static double Derated(ReviewContext context, Supply supply) =>
        supply.Part!.Type.Ratings is { FullUpTo: { } full, Derating: { } perKelvin }
            ? Math.Max(0, 1 - (perKelvin.DecimalFractions * Math.Max(0, context.Ambient - full.DegreesCelsius)))
            : 1;

    private readonly record struct Sums(double Steady, double WarmUp, double Worst)
    {
        public static Sums Of(IReadOnlyList<Demand> demands) => new(
            demands.Sum(demand => demand.SteadyAmperes),
            demands.Sum(demand => demand.WarmUpAmperes),
            demands.Sum(demand => demand.WorstAmperes));
    }
}
