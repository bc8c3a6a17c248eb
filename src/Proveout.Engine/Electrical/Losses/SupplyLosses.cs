namespace Proveout.Engine.Electrical;

/// <summary>What supplies and converters turn into heat: what they give, over their efficiency, less what they give.</summary>
internal static class SupplyLosses
{
    // What a data sheet prints is met within three points from half load up; common practice.
    private const double EfficiencyBand = 0.03;

    // A small converter on a board whose type says nothing: from a straight regulator to a good switching one; common practice.
    private const double BoardEfficiencyLow = 0.6;
    private const double BoardEfficiencyHigh = 0.93;
    private const double BoardWatts = 60;

    // Up to 1.5 % of its rated power without any load; from memory.
    private const double IdleShare = 0.015;

    public static IEnumerable<LossLine> Lines(ReviewContext context, HashSet<string> inside) =>
        from reach in Inside(context, inside)
        let band = EfficiencyOf(reach.Supply)
        where band is not null
        select LineOf(context, reach, band.Value.Low, band.Value.High);

    public static IEnumerable<string> WithoutEfficiency(ReviewContext context, HashSet<string> inside) =>
        Inside(context, inside).Where(reach => EfficiencyOf(reach.Supply) is null).Select(reach => reach.Supply.Part!.Designation);

    public static IEnumerable<SupplyLoss> Asked(ReviewContext context, HashSet<string> inside) =>
        from reach in Inside(context, inside)
        where double.IsFinite(reach.Supply.LimitAmperes)
        select new SupplyLoss(reach.Supply.Part!.Designation, reach.Supply.LimitAmperes, context.Demands.On(reach).Sum(demand => demand.WorstAmperes));

    // A source that stands on its own, such as a battery, converts nothing.
    private static IEnumerable<SupplyReach> Inside(ReviewContext context, HashSet<string> inside) =>
        context.Supplies.Where(reach => reach.Supply is { Part: { } part, Source.Feed: not null } && inside.Contains(part.Designation));

    private static (double Low, double High)? EfficiencyOf(Supply supply) => supply.Part!.Type.Ratings.Efficiency?.DecimalFractions is { } efficiency
        ? (efficiency - EfficiencyBand, Math.Min(0.99, efficiency + EfficiencyBand))
        : supply.Volts * supply.LimitAmperes <= BoardWatts ? (BoardEfficiencyLow, BoardEfficiencyHigh) : null;

    private static LossLine LineOf(ReviewContext context, SupplyReach reach, double low, double high)
    {
        var (supply, demands) = (reach.Supply, context.Demands.On(reach));
        var most = supply.Volts * supply.LimitAmperes;
        var (rest, work) = (supply.Volts * demands.Sum(demand => demand.SteadyAmperes), supply.Volts * demands.Sum(demand => demand.WorstAmperes));
        var idle = double.IsFinite(most) ? IdleShare * most : 0;
        double Watts(double given) => (Math.Min(most, LossShares.Most * given) * ((1 / low) - 1)) + idle;
        var said = supply.Part!.Type.Ratings.Efficiency is null ? "its type does not say; common practice" : "its type";
        return new(
            supply.Part.Designation,
            LossKind.Conversion,
            LossShares.Least * rest * ((1 / high) - 1),
            Watts(rest),
            Watts(work),
            $"{LossShares.Number(supply.Volts)} V give {LossShares.Number(rest)} W at rest and {LossShares.Number(work)} W at work, efficiency {LossShares.Number(100 * low)} to {LossShares.Number(100 * high)} % ({said})");
    }
}
