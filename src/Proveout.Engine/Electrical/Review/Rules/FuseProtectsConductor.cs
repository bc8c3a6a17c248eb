namespace Proveout.Engine.Electrical;

/// <summary>No more current can flow for long in a conductor than it bears: the fuse before it is no larger than its capacity.</summary>
internal sealed class FuseProtectsConductor : IReviewRule
{
    public string Id => "fuse-protects-conductor";

    public string Words => "fuse before a conductor no larger than the conductor bears";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        foreach (var conductor in context.Design.Conductors)
        {
            var (from, to) = (context.Wiring.TerminalNode(conductor.From), context.Wiring.TerminalNode(conductor.To));
            var squareMillimetres = conductor.CrossSection.SquareMillimeters;
            var capacity = CurrentCapacity.Of(squareMillimetres);
            var worst = context.Supplies
                .Where(reach => reach.Feeds(from) && reach.Feeds(to))
                .MaxBy(reach => Math.Max(reach.AmperesAt(from), reach.AmperesAt(to)));
            if (worst is null || Math.Max(worst.AmperesAt(from), worst.AmperesAt(to)) is var amperes && amperes <= capacity)
                continue;
            yield return new Finding(
                Id,
                worst.Supply.Volts >= 50 || squareMillimetres >= 0.5 ? FindingSeverity.Error : FindingSeverity.Warning,
                [conductor.Id],
                $"{conductor.Id} from {conductor.From} to {conductor.To} has {ReviewContext.Number(squareMillimetres, 2)} mm² and bears {ReviewContext.Number(capacity)} A; {Limit(amperes, worst.Supply)}.",
                $"Take a fuse of at most {ReviewContext.Number(Math.Floor(capacity * 10) / 10)} A before it, or a thicker conductor.",
                $"IEC 60364-4-43 clause 433.1 (In ≤ Iz); {CurrentCapacity.SourceFor(squareMillimetres)}");
        }
    }

    private static string Limit(double amperes, Supply supply) => double.IsPositiveInfinity(amperes)
        ? $"no fuse lies between it and {supply.Name}"
        : $"{supply.Name} can drive {ReviewContext.Number(amperes)} A through it for long";
}
