using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Two plugs of one family and size on one part are exchanged.</summary>
internal sealed class ConnectorsExchanged : IWiringFaultRule
{
    public string Kind => "connectors-exchanged";

    public string Words => "like plugs exchanged";

    public double Prior => Priors.ConnectorsExchanged;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        let used = part.Type.Connectors.Where(connector => connector.Pluggable && IsUsed(context, part, connector)).ToArray()
        from pair in Pairs(used)
        where pair.A.Family == pair.B.Family && pair.A.Terminals.Count == pair.B.Terminals.Count
        select Exchange(context, part, pair.A, pair.B);

    private static bool IsUsed(WiringContext context, Part part, Connector connector) =>
        connector.Terminals.Any(terminal => context.ConductorsAt(new TerminalReference(part.Designation, terminal)).Any());

    private static IEnumerable<(Connector A, Connector B)> Pairs(Connector[] connectors) =>
        connectors.SelectMany((one, index) => connectors.Skip(index + 1).Select(two => (one, two)));

    private WiringFault Exchange(WiringContext context, Part part, Connector one, Connector two)
    {
        var changes = new List<ElementChange>();
        Consequence? worst = null;
        for (var index = 0; index < one.Terminals.Count; index++)
        {
            var a = new TerminalReference(part.Designation, one.Terminals[index]);
            var b = new TerminalReference(part.Designation, two.Terminals[index]);
            changes.AddRange(Cross(context, a, b));
            changes.AddRange(Cross(context, b, a));
            var met = context.OfJoining(context.Wiring.TerminalNode(a), context.Wiring.TerminalNode(b));
            worst = worst is null ? met : Consequence.Worse(worst, met);
        }

        return WiringContext.Fault(
            this,
            $"{part.Designation}:{one.Name}:{two.Name}",
            $"The plugs of {one.Name} and {two.Name} on {part.Designation} are exchanged.",
            [part.Designation, one.Name, two.Name],
            worst!,
            "Eye: the label on each plug against its socket.",
            [.. changes]);
    }

    private static IEnumerable<ElementChange> Cross(WiringContext context, TerminalReference plug, TerminalReference socket)
    {
        var mating = context.MatingOf(plug);
        yield return new Cut(mating.Index);
        yield return new Join(mating.A, context.Wiring.TerminalNode(socket), mating.LowOhms, mating.HighOhms, ByPlug: true);
    }
}
