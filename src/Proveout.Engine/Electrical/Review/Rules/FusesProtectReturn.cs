using Proveout.Engine.Machine;
using Proveout.Engine.Numerics;

namespace Proveout.Engine.Electrical;

/// <summary>A common return (0 V or neutral) bears what the fuses of all that returns through it let through together.</summary>
internal sealed class FusesProtectReturn : IReviewRule
{
    public string Id => "fuses-protect-return";

    public string Words => "returns that bear all the fuses behind them";

    public IEnumerable<Finding> Review(ReviewContext context)
    {
        var ports = PortsInside(context);
        foreach (var conductor in context.Design.Conductors.Where(conductor => conductor.Colour != ConductorColour.GreenYellow))
        {
            var capacity = CurrentCapacity.Of(conductor.CrossSection.SquareMillimeters);
            var (amperes, supply) = context.ReturnsAt(context.Wiring.TerminalNode(conductor.From))
                .Where(reach => reach.Returns(context.Wiring.TerminalNode(conductor.To)))
                .Select(reach => (AmperesBehind(context, reach, conductor, ports), reach.Supply))
                .DefaultIfEmpty()
                .MaxBy(found => found.Item1);
            if (amperes > capacity)
                yield return Found(conductor, capacity, amperes, supply);
        }
    }

    private Finding Found(Conductor conductor, double capacity, double amperes, Supply supply) => new(
        Id,
        LimitedPower.SeverityOf(supply, conductor.CrossSection.SquareMillimeters),
        [conductor.Id],
        $"{conductor.Id} from {conductor.From} to {conductor.To} is a return of {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm² and bears {ReviewContext.Number(capacity)} A; {Limit(amperes, supply)}.",
        "Take a thicker conductor, smaller fuses, or a return for each branch.",
        $"IEC 60364-4-43 clause 433.1; {CurrentCapacity.SourceFor(conductor.CrossSection.SquareMillimeters)}")
    {
        Numbers = [new("capacity", capacity, "A"), new("limit", amperes, "A")],
    };

    private static string Limit(double amperes, Supply supply) => double.IsPositiveInfinity(amperes)
        ? $"no fuse lies between {supply.Name} and what returns through it"
        : $"what returns through it to {supply.Name} is limited to {ReviewContext.Number(amperes)} A only";

    // What returns only through this conductor; where another way is left, the two share and nothing is said. Its far side alone is walked.
    private static double AmperesBehind(ReviewContext context, SupplyReach reach, Conductor conductor, Islands ports)
    {
        var copper = context.Context.CopperOf(conductor);
        var far = context.JoinedTo(reach.IsFartherBack(copper.A, copper.B) ? copper.A : copper.B, element => element == copper);
        if (far.Contains(reach.Supply.Zero))
            return 0;
        var behind = far
            .Where(node => IsReturn(context, node))
            .Select(ports.Of)
            .ToHashSet();
        return reach.AmperesTogether(behind.SelectMany(port => ports.Members(port)).Where(node => context.TerminalAt(node) is not null));
    }

    private static bool IsReturn(ReviewContext context, int node) =>
        context.TerminalAt(node)?.Role is TerminalRole.ZeroVolt or TerminalRole.Neutral or TerminalRole.Passive or TerminalRole.Output;

    // Terminals of one part between which its circuit lets current through: a coil is one port, the contacts beside it others.
    private static Islands PortsInside(ReviewContext context) => new(
        context.Wiring.Nodes.Count,
        context.Wiring.Elements
            .Where(element => element.Kind == ElementKind.Inside && element.Part is not Insulation)
            .Select(element => (element.A, element.B)));
}
