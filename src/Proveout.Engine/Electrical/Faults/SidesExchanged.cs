using Proveout.Engine.Machine;

namespace Proveout.Engine.Electrical;

/// <summary>Two groups of terminals on one part are exchanged as a whole: load and control, input and output.</summary>
internal sealed class SidesExchanged : IWiringFaultRule
{
    public string Kind => "sides-exchanged";

    public string Words => "two sides of one part exchanged";

    public double Prior => Priors.SidesExchanged;

    public IEnumerable<WiringFault> Generate(WiringContext context) =>
        from part in context.Design.Parts
        from pair in Pairs([.. part.Type.Connectors.Where(connector => !connector.Pluggable && connector.Terminals.Count > 1)])
        where pair.One.Terminals.Count == pair.Two.Terminals.Count
        let one = TerminalsOf(part, pair.One)
        let two = TerminalsOf(part, pair.Two)
        where one.Any(context.IsWired) && two.Any(context.IsWired)
        let exchanged = Rearrangement.Of(context, one.Concat(two), terminal => Opposite(one, two, terminal))
        where exchanged.ChangesSomething(context)
        select WiringContext.Fault(
            this,
            $"{part.Designation}:{pair.One.Name}:{pair.Two.Name}",
            $"On {part.Designation} the conductors of {pair.One.Name} and {pair.Two.Name} are exchanged.",
            [part.Designation, pair.One.Name, pair.Two.Name, .. exchanged.Conductors],
            exchanged.Consequence(context),
            "Eye: the numbers on the part against the labels, before power.",
            exchanged.Changes(context));

    private static IEnumerable<(Connector One, Connector Two)> Pairs(Connector[] connectors) =>
        connectors.SelectMany((one, index) => connectors.Skip(index + 1).Select(two => (one, two)));

    private static TerminalReference[] TerminalsOf(Part part, Connector connector) =>
        [.. connector.Terminals.Select(name => new TerminalReference(part.Designation, name))];

    private static TerminalReference Opposite(TerminalReference[] one, TerminalReference[] two, TerminalReference terminal) =>
        Array.IndexOf(one, terminal) is >= 0 and var place ? two[place] : one[Array.IndexOf(two, terminal)];
}
