using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>No more current can flow for long in a conductor than it bears: the fuse before it is no larger than its capacity.</summary>
/// <remarks>
/// Where only the circuits beside it or warm air take the capacity below the fuse, the loads decide (IEC 60364-4-43 clause 433.3.1) and
/// <see cref="ConductorBearsLoad"/> looks at them: then it is a note.
/// </remarks>
internal sealed class FuseProtectsConductor : IReviewRule
{
    public string Id => "fuse-protects-conductor";

    public string Words => "fuse before a conductor no larger than the conductor bears";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        foreach (var conductor in context.Design.Conductors)
        {
            var (from, to) = (context.Wiring.TerminalNode(conductor.From), context.Wiring.TerminalNode(conductor.To));
            var capacity = CurrentCapacity.Of(conductor.CrossSection.SquareMillimeters);
            var worst = context.SuppliesAt(from)
                .Where(reach => reach.Feeds(to))
                .MaxBy(reach => Math.Max(reach.AmperesAt(from), reach.AmperesAt(to)));
            if (worst is null || Math.Max(worst.AmperesAt(from), worst.AmperesAt(to)) is not (> 0 and var amperes))
                continue;
            if (amperes > capacity)
                yield return Found(conductor, worst.Supply, amperes, capacity);
            else if (context.Loading.Of(conductor) is var bearing && amperes > bearing.Amperes && !LimitedPower.Is(worst.Supply))
                yield return Grouped(conductor, worst.Supply, amperes, bearing);
        }
    }

    private Finding Found(Conductor conductor, Supply supply, double amperes, double capacity) => new(
        Id,
        LimitedPower.SeverityOf(supply, conductor.CrossSection.SquareMillimeters),
        [conductor.Id],
        $"{Described(conductor)} and bears {ReviewContext.Number(capacity)} A; {Limit(amperes, supply)}.",
        $"Take a fuse of at most {ReviewContext.Number(Math.Floor(capacity * 10) / 10)} A before it, or a thicker conductor.",
        $"IEC 60364-4-43 clause 433.1 (In ≤ Iz); {CurrentCapacity.SourceFor(conductor.CrossSection.SquareMillimeters)}")
    {
        Numbers = [new("capacity", capacity, "A"), new("limit", amperes, "A")],
    };

    private Finding Grouped(Conductor conductor, Supply supply, double amperes, Bearing bearing) => new(
        Id,
        FindingSeverity.Note,
        [conductor.Id],
        $"{Described(conductor)} and bears {ReviewContext.Number(bearing.Amperes)} A where it lies ({bearing.Words}); {Limit(amperes, supply)}.",
        "Keep to the loads that the design has, or take a smaller fuse, a thicker conductor or another route.",
        "IEC 60364-4-43 clauses 433.1 and 433.3.1; IEC 60204-1 annex D")
    {
        Numbers = [new("capacity", bearing.Amperes, "A"), new("limit", amperes, "A")],
    };

    private static string Described(Conductor conductor) =>
        $"{conductor.Id} from {conductor.From} to {conductor.To} has {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm²";

    private static string Limit(double amperes, Supply supply) => double.IsPositiveInfinity(amperes)
        ? $"no fuse lies between it and {supply.Name}"
        : $"{supply.Name} can drive {ReviewContext.Number(amperes)} A through it for long";
}
