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
        var returns = context.Wiring.Nodes.Where(node => IsReturn(context, node)).Select(node => node.Index).ToArray();
        foreach (var conductor in context.Design.Conductors.Where(conductor => conductor.Colour != ConductorColour.GreenYellow))
        {
            var capacity = CurrentCapacity.Of(conductor.CrossSection.SquareMillimeters);
            var (amperes, supply) = context.Supplies
                .Where(reach => reach.Returns(context.Wiring.TerminalNode(conductor.From)) && reach.Returns(context.Wiring.TerminalNode(conductor.To)))
                .Select(reach => (AmperesBehind(context, reach, conductor, returns, ports), reach.Supply))
                .DefaultIfEmpty()
                .MaxBy(found => found.Item1);
            if (amperes > capacity)
                yield return Found(conductor, capacity, amperes, supply);
        }
    }

    private Finding Found(Conductor conductor, double capacity, double amperes, Supply supply) => new(
        Id,
        conductor.CrossSection.SquareMillimeters >= 0.5 ? FindingSeverity.Error : FindingSeverity.Warning,
        [conductor.Id],
        $"{conductor.Id} from {conductor.From} to {conductor.To} is a return of {ReviewContext.Number(conductor.CrossSection.SquareMillimeters, 2)} mm² and bears {ReviewContext.Number(capacity)} A; {Limit(amperes, supply)}.",
        "Take a thicker conductor, smaller fuses, or a return for each branch.",
        $"IEC 60364-4-43 clause 433.1; {CurrentCapacity.SourceFor(conductor.CrossSection.SquareMillimeters)}");

    private static string Limit(double amperes, Supply supply) => double.IsPositiveInfinity(amperes)
        ? $"no fuse lies between {supply.Name} and what returns through it"
        : $"what returns through it to {supply.Name} is limited to {ReviewContext.Number(amperes)} A only";

    // What returns only through this conductor; where another way is left, the two share and nothing is said.
    private static double AmperesBehind(ReviewContext context, SupplyReach reach, Conductor conductor, int[] returns, Islands ports)
    {
        var copper = context.Context.CopperOf(conductor);
        var left = context.JoinedTo(reach.Supply.Zero, element => element == copper);
        var behind = returns.Where(node => reach.Returns(node) && !left.Contains(node)).Select(ports.Of).ToHashSet();
        return reach.AmperesTogether(context.Wiring.Nodes
            .Where(node => node.Kind == NodeKind.Terminal && behind.Contains(ports.Of(node.Index)))
            .Select(node => node.Index));
    }

    private static bool IsReturn(ReviewContext context, NetworkNode node) =>
        node.Kind == NodeKind.Terminal
        && context.Design.FindTerminal(new TerminalReference(node.Subject, node.Place))!.Role
            is TerminalRole.ZeroVolt or TerminalRole.Neutral or TerminalRole.Passive or TerminalRole.Output;

    // Terminals of one part between which its circuit lets current through: a coil is one port, the contacts beside it others.
    private static Islands PortsInside(ReviewContext context) => new(
        context.Wiring.Nodes.Count,
        context.Wiring.Elements
            .Where(element => element.Kind == ElementKind.Inside && element.Part is not Insulation)
            .Select(element => (element.A, element.B)));
}
