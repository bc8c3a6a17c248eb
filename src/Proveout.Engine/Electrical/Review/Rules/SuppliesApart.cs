using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>No two sources of direct voltage are joined that differ, or stand against each other.</summary>
internal sealed class SuppliesApart : IReviewRule
{
    // Trimmers and tolerances leave supplies of one nominal voltage so far apart; common practice.
    private const double AlikeShare = 0.1;

    public string Id => "supplies-apart";

    public string Words => "supplies of different voltage, or against each other, not joined";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var wiring = context.Wiring;
        var mated = new MachineState(false, []);
        var nets = new MetalNets(wiring, element => StateNetwork.Conducts(wiring, mated, element));
        Supply[] sources = [.. context.Supplies.Select(reach => reach.Supply).Where(supply => !supply.IsMains)];
        foreach (var (at, one) in sources.Index())
            foreach (var other in sources.Skip(at + 1))
            {
                var (plus, zero) = (nets.Of(one.Plus), nets.Of(one.Zero));
                var (otherPlus, otherZero) = (nets.Of(other.Plus), nets.Of(other.Zero));
                if (plus == otherPlus && zero == otherZero && Math.Abs(one.Volts - other.Volts) > AlikeShare * Math.Max(one.Volts, other.Volts))
                    yield return Found(one, other, "stand in parallel: the weaker is driven beyond its voltage");
                else if (plus == otherZero && zero == otherPlus)
                    yield return Found(one, other, "stand against each other: both are shorted through the other");
            }
    }

    private Finding Found(Supply one, Supply other, string how) => new(
        Id,
        FindingSeverity.Error,
        [one.Part!.Designation, other.Part!.Designation],
        $"{Capital.Of(one.Name)} and {other.Name} {how}.",
        "Take them apart: each voltage needs a positive of its own.",
        "common practice")
    {
        Numbers = [new("voltage", one.Volts, "V"), new("voltage", other.Volts, "V")],
    };
}
